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
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** On which checks somebody who writes a new cause is asked what it shows. */
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
   * Those on which the look-alikes show most; then, as long as what was answered leaves one of them
   * best told by a check of which nothing was asked, that one as well. What was asked once stays,
   * whatever the answers after it make of the others. None where effects say what is seen: then the
   * person names the marks of this cause alone.
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

  /** What the new cause shows, by the answers so far. */
  private double[] row(Check check) {
    String answer = answers.getOrDefault(check.id(), "");
    return answer.isBlank()
        ? byEffects.row(check).orElse(check.otherwise())
        : RowAnswer.row(answer, check);
  }

  /** Where effects say what is seen, what they tell from each look-alike, a line each. */
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
   * Checks that go together with the marks that the person told, as causes that are known show:
   * once all of those are told, for they say which.
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
    return new Companions(base).of(told, known);
  }

  /** All that somebody is asked about. */
  List<Check> all() {
    return Stream.of(
            offered(), also(), companions().stream().map(Companions.Companion::check).toList())
        .flatMap(List::stream)
        .toList();
  }

  /** Checks that the person named besides. */
  List<Check> also() {
    List<Check> offered = offered();
    return also.stream()
        .distinct()
        .map(base.checks()::get)
        .filter(c -> c != null && !offered.contains(c))
        .toList();
  }
}
