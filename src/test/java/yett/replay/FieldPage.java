package yett.replay;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import yett.interview.course.Expertise;
import yett.knowledge.RuleBase;

/**
 * The end of docs/cases.md: the blind cases, and all cases with worse answers.
 *
 * @param own cases of those who wrote the cards, as they are told
 * @param blind the others
 */
record FieldPage(Expertise expertise, List<Came> own, List<Came> blind) {
  /** So many cases are as good as all to tell by how much worse answers cost, and take minutes. */
  private static final int WORSE_ONE_OF = 5;

  /** One way of blurring each case. */
  private static final long SEED = 1;

  private static final String FIELD =
      """

      ## Blind cases

      The stories and answers are by people who had seen only the questions of the rule base
      ([field-set.md](field-set.md)). Nobody looks at single cases of those kept aside. Where people are in danger, the stop
      is judged; elsewhere, the cause. A *root* is a true cause that no other true cause brought about. *All roots repaired*
      counts the cases whose roots have repairs. A repair is *needless* if it removed no true cause and is not follow-up work
      of one that did. Handing over is right where no card fits or the person may not do the repair (a trainee, or work at the
      mains); *where they may* and *those it need not be* leave these out.

      | blind cases | | right stop | root first | a true cause first | root among three | all roots repaired | where they may | checks till then, median | checks in all, median | in nine of ten at most | needless repairs a case | handed over | those it need not be | unsafe |
      |---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|
      """;

  private static final String BLURRED =
      """

      ## With worse answers

      Every fifth case without danger is replayed twice more: with every tenth answer changed at random to another outcome,
      and with a third of the answers "cannot tell". Dangers, proofs and complaints stay as they are.

      | cases | answers | | root first | root among three | checks, median | in nine of ten at most | unsafe |
      |---|---|---|---|---|---|---|---|
      """;

  String text() {
    StringBuilder text = new StringBuilder(FIELD);
    Map<String, Predicate<Came>> parts = new LinkedHashMap<>();
    parts.put("all", c -> true);
    parts.put("to learn by", c -> !c.recorded().keptAside());
    parts.put("kept aside", c -> c.recorded().keptAside());
    parts.forEach((name, part) -> text.append(row(name, blind.stream().filter(part).toList())));
    text.append(BLURRED);
    Map<String, List<Came>> ofOwn = worse(own);
    Map<String, List<Came>> ofBlind = worse(blind);
    ofOwn.forEach((how, cases) -> text.append(row("not blind", how, cases)));
    parts.forEach(
        (name, part) ->
            ofBlind.forEach(
                (how, cases) ->
                    text.append(row("blind, " + name, how, cases.stream().filter(part).toList()))));
    return text.toString();
  }

  private String row(String name, List<Came> all) {
    RuleBase base = expertise.base();
    List<Came> judged = all.stream().filter(Came::judged).toList();
    List<Came> stopped = all.stream().filter(c -> c.recorded().stop().isPresent()).toList();
    List<Came> mendable = judged.stream().filter(c -> c.mendable(base)).toList();
    List<Came> theirs = mendable.stream().filter(c -> !c.reserved(base)).toList();
    List<Came> mended = mendable.stream().filter(c -> c.tillRoots().isPresent()).toList();
    return cells(
        name,
        all.size(),
        share(stopped, c -> c.replayed().judged().stop().orElse(false)),
        share(judged, c -> c.rootAmong(1)),
        share(judged, Came::trueCauseFirst),
        share(judged, c -> c.rootAmong(3)),
        share(mendable, c -> c.tillRoots().isPresent()),
        share(theirs, c -> c.tillRoots().isPresent()),
        atShare(0.5, mended, c -> c.tillRoots().orElseThrow()),
        atShare(0.5, judged, c -> Score.checks(c.replayed())),
        atShare(0.9, judged, c -> Score.checks(c.replayed())),
        String.format(
            Locale.ROOT,
            "%.1f",
            judged.stream().mapToInt(c -> c.needless().size()).average().orElse(0)),
        share(judged, Came::handedOver),
        share(theirs, Came::handedOver),
        unsafe(all));
  }

  /** How cases come out as they are told, then with wrong answers, then with missing ones. */
  private Map<String, List<Came>> worse(List<Came> told) {
    List<Came> all = told.stream().filter(Came::judged).toList();
    List<Came> judged =
        IntStream.range(0, all.size())
            .filter(i -> i % WORSE_ONE_OF == 0)
            .mapToObj(all::get)
            .toList();
    Map<String, List<Came>> worse = new LinkedHashMap<>();
    worse.put("as told", judged);
    worse.put("a tenth wrong", again(judged, c -> blurred(c).wrong(c.meant())));
    worse.put("a third missing", again(judged, c -> blurred(c).missing()));
    return worse;
  }

  private Blurred blurred(Came came) {
    return new Blurred(came.recorded(), expertise.base(), SEED);
  }

  private List<Came> again(List<Came> cases, Function<Came, RecordedCase> blur) {
    return Came.of(cases.stream().map(blur).toList(), expertise);
  }

  private static String row(String name, String answers, List<Came> cases) {
    return cells(
        name,
        answers,
        cases.size(),
        share(cases, c -> c.rootAmong(1)),
        share(cases, c -> c.rootAmong(3)),
        atShare(0.5, cases, c -> Score.checks(c.replayed())),
        atShare(0.9, cases, c -> Score.checks(c.replayed())),
        unsafe(cases));
  }

  private static String cells(Object... cells) {
    return "| " + String.join(" | ", Stream.of(cells).map(Object::toString).toList()) + " |\n";
  }

  private static String share(List<Came> of, Predicate<Came> what) {
    long right = of.stream().filter(what).count();
    return of.isEmpty()
        ? ""
        : String.format(
            Locale.ROOT, "%d of %d, %.0f %%", right, of.size(), 100.0 * right / of.size());
  }

  /** The number that this share of the cases does not exceed. */
  private static String atShare(double share, List<Came> cases, ToDoubleFunction<Came> what) {
    double[] sorted = cases.stream().mapToDouble(what).sorted().toArray();
    int at = (int) Math.ceil(share * sorted.length) - 1;
    return sorted.length == 0 ? "" : String.format(Locale.ROOT, "%.0f", sorted[Math.max(0, at)]);
  }

  private static String unsafe(List<Came> cases) {
    int unsafe = cases.stream().mapToInt(c -> c.replayed().unsafe().size()).sum();
    return unsafe == 0 ? "none" : Integer.toString(unsafe);
  }
}
