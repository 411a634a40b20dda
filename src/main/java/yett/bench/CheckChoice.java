package yett.bench;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** Chooses the checks about which the author of a new cause is asked what it shows. */
final class CheckChoice {
  private final RuleBase base;
  private final List<String> like;
  private final List<String> also;
  private final Map<String, String> answers;
  private final SignsByEffects byEffects;

  CheckChoice(RuleBase base, Map<String, String> answers) {
    this.base = base;
    this.answers = answers;
    this.like =
        Lists.ids(answers.getOrDefault("like", "")).stream()
            .filter(base.causes()::containsKey)
            .toList();
    this.byEffects = new EffectChoice(base).implied(answers);
    this.also = Lists.ids(answers.getOrDefault("also", ""));
  }

  /**
   * The checks on which the look-alikes show most. When these are answered and a look-alike is best
   * told by a check that was not asked about, that check is added. A check that was once asked
   * about stays, whatever is answered later. Empty if effects say what is seen; then the author
   * names only the cause's own marks.
   */
  List<Check> offered() {
    if (!byEffects.isEmpty()) {
      return List.of();
    }
    Set<Check> offered = new LinkedHashSet<>(new Neighbours(base, like).checks());
    answers.keySet().stream()
        .map(base.checks()::get)
        .filter(c -> c != null && c.kind() == Check.Kind.CHECK && !also.contains(c.id()))
        .forEach(offered::add);
    if (offered.stream().allMatch(c -> answers.containsKey(c.id()))) {
      untold(offered).ifPresent(offered::add);
    }
    return List.copyOf(offered);
  }

  private Optional<Check> untold(Set<Check> offered) {
    List<Check> checks = ToldApart.checks(base);
    return like.stream()
        .map(other -> ToldApart.best(checks, this::row, other).check())
        .filter(check -> !offered.contains(check))
        .findFirst();
  }

  /** The new cause's row on a check, by the answers so far. */
  private double[] row(Check check) {
    String answer = answers.getOrDefault(check.id(), "");
    return answer.isBlank()
        ? byEffects.row(check).orElse(check.otherwise())
        : RowAnswer.row(answer, check);
  }

  /** If effects say what is seen: from which look-alikes they tell the cause, one line each. */
  List<String> toldByEffects() {
    List<Check> checks = ToldApart.checks(base);
    return byEffects.isEmpty() || checks.isEmpty()
        ? List.of()
        : like.stream()
            .map(other -> told(other, ToldApart.best(checks, this::row, other)))
            .toList();
  }

  private String told(String other, ToldApart best) {
    return String.format(
        Locale.ROOT,
        "Told apart from %s so far by %s (%.0f %%)%s.",
        other,
        best.check().id(),
        100 * best.distance(),
        byEffects.row(best.check()).isPresent() ? "" : ", if it shows there as a sound gate does");
  }

  /**
   * Checks that go together with the marks named, as known causes show. Empty if no effects were
   * chosen, or until all marks have their rows, because the rows say which outcomes are meant.
   */
  List<Companions.Companion> companions() {
    List<Check> marks = also();
    if (byEffects.isEmpty() || !marks.stream().allMatch(c -> answers.containsKey(c.id()))) {
      return List.of();
    }
    Map<String, String> told = new LinkedHashMap<>();
    marks.forEach(c -> told.put(c.id(), answers.get(c.id())));
    RowAnswer.parts(answers.getOrDefault("complaints", ""))
        .keySet()
        .forEach(id -> told.put(id, Check.SAID));
    Set<String> known =
        base.checks().values().stream()
            .filter(c -> byEffects.row(c).isPresent())
            .map(Check::id)
            .collect(Collectors.toSet());
    return new Companions(base).of(told, known, kin());
  }

  /** The look-alikes and the causes of the area. */
  private Set<String> kin() {
    String area = answers.containsKey("area") ? CardQuestions.areaOf(answers) : "";
    return Stream.concat(
            like.stream(),
            base.causes().values().stream().filter(c -> c.area().equals(area)).map(Cause::id))
        .collect(Collectors.toSet());
  }

  /** All checks about which the author is asked. */
  List<Check> all() {
    return Stream.of(
            offered(), also(), companions().stream().map(Companions.Companion::check).toList())
        .flatMap(List::stream)
        .toList();
  }

  /** Checks that the author named in addition. */
  List<Check> also() {
    List<Check> offered = offered();
    return also.stream()
        .distinct()
        .map(base.checks()::get)
        .filter(c -> c != null && !offered.contains(c))
        .toList();
  }
}
