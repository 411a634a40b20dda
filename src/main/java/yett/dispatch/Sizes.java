package yett.dispatch;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yett.dispatch.DispatchSheet.Packed;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.knowledge.VanStock;

/**
 * Finds which size of a part a gate needs or, if that is not known, what to ask; and whether the
 * van has it.
 */
final class Sizes {
  private final RuleBase base;
  private final Map<String, String> parts;
  private final Map<String, String> told;
  private final Optional<VanStock> stock;

  /**
   * @param told answers about this gate: question to answer. Usual answers do not decide which size
   *     to bring
   */
  Sizes(RuleBase base, Map<String, String> told, Optional<VanStock> stock) {
    this.base = base;
    this.parts = base.parts();
    this.told = told;
    this.stock = stock;
  }

  Packed of(Packed part) {
    String by = parts.getOrDefault(part.name(), "");
    Optional<SiteQuestion> question = Optional.ofNullable(base.siteQuestions().get(by));
    Optional<String> size = question.flatMap(this::answer);
    Optional<String> ask =
        by.isEmpty() || size.isPresent()
            ? Optional.empty()
            : Optional.of(question.map(q -> q.name().toLowerCase(Locale.ROOT)).orElse(by));
    return new Packed(
        part.name(),
        part.chance(),
        part.price(),
        part.covers(),
        size,
        ask,
        stock.map(s -> s.words(part.name(), size)));
  }

  private Optional<String> answer(SiteQuestion question) {
    return Optional.ofNullable(told.get(question.id()))
        .map(a -> question.choices().getOrDefault(a, a));
  }
}
