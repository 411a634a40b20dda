package yett.dispatch;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import yett.dispatch.DispatchSheet.Packed;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.knowledge.VanStock;

/** Which size of a part a gate needs, or what to ask for it, and whether the van has it. */
final class Sizes {
  private final RuleBase base;
  private final Map<String, String> parts;
  private final Map<String, String> told;
  private final Optional<VanStock> stock;

  /**
   * @param told what somebody said of the gate: question to answer; what is usual elsewhere is no
   *     size to bring
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
