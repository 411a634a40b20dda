package yett.trial;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.interview.moment.Moment;
import yett.replay.RecordedCase;
import yett.replay.Replayed;
import yett.replay.Score;

/**
 * What is kept of the run of a case, to compare another run with it.
 *
 * @param right whether the result is as the case file says; empty if the file says nothing
 * @param path checks, repairs and proofs in the order in which they came up
 * @param ranking the first causes at the end, each with its chance
 * @param evidence what the answers weighed for the causes in view, which are the true ones and
 *     those ranked first
 */
record Account(
    @JsonProperty("case") String name,
    String file,
    Optional<Boolean> right,
    String ended,
    List<String> path,
    Map<String, Double> ranking,
    List<String> repairs,
    List<String> stops,
    double minutes,
    List<String> unsafe,
    List<Weighed> evidence) {
  private static final int FIRST = 5;
  private static final int IN_VIEW = 2;
  private static final Set<String> STEPS = Set.of("check", "look-round", "repair", "proof");

  /** Fills in what a file leaves out because it is empty. */
  Account {
    right = right == null ? Optional.empty() : right;
    path = path == null ? List.of() : List.copyOf(path);
    ranking = ranking == null ? Map.of() : ranking;
    repairs = repairs == null ? List.of() : List.copyOf(repairs);
    stops = stops == null ? List.of() : List.copyOf(stops);
    unsafe = unsafe == null ? List.of() : List.copyOf(unsafe);
    evidence = evidence == null ? List.of() : List.copyOf(evidence);
  }

  /** Identifies a case within a rule base. */
  record Key(String file, String name) {
    static Key of(RecordedCase recorded) {
      return new Key(recorded.file(), recorded.name());
    }
  }

  @JsonIgnore
  Key key() {
    return new Key(file, name);
  }

  /**
   * @param also causes to have in view as well, because an earlier run had them
   */
  static Account of(RecordedCase recorded, Replayed replayed, Set<String> also) {
    Map<String, Double> ranking = new LinkedHashMap<>();
    replayed.ranking().stream()
        .limit(FIRST)
        .forEach(r -> ranking.put(r.cause(), Math.round(r.chance() * 1000) / 1000.0));
    Set<String> inView = inView(recorded, ranking, also);
    inView.retainAll(replayed.moment().belief().model().causes());
    return new Account(
        recorded.name(),
        recorded.file(),
        Score.right(replayed),
        replayed.ended(),
        replayed.steps().stream()
            .filter(s -> STEPS.contains(s.kind()))
            .map(s -> s.kind().equals("repair") ? "repair " + s.id() : s.id())
            .toList(),
        ranking,
        replayed.repairs().stream().map(Replayed.Mended::repair).toList(),
        replayed.stops(),
        replayed.spentMinutes(),
        replayed.unsafe(),
        evidence(replayed.moment(), inView));
  }

  private static Set<String> inView(
      RecordedCase recorded, Map<String, Double> ranking, Set<String> also) {
    Set<String> inView = new LinkedHashSet<>(also);
    recorded.truth().ifPresent(inView::addAll);
    recorded.expect().ifPresent(inView::add);
    ranking.keySet().stream().limit(IN_VIEW).forEach(inView::add);
    return inView;
  }

  /**
   * The account as it would be with fewer causes in view.
   *
   * @param also causes in view as well; the account has to have been made with them
   */
  Account seenWith(RecordedCase recorded, Set<String> also) {
    Set<String> inView = inView(recorded, ranking, also);
    return new Account(
        name,
        file,
        right,
        ended,
        path,
        ranking,
        repairs,
        stops,
        minutes,
        unsafe,
        evidence.stream().flatMap(w -> w.of(inView).stream()).toList());
  }

  private static List<Weighed> evidence(Moment moment, Set<String> inView) {
    Stream<Weighed> answers =
        moment.trail().moves().stream()
            .map(m -> Weighed.of(m, inView, moment))
            .filter(w -> !w.decibans().isEmpty());
    return Stream.concat(Stream.of(Weighed.outset(inView, moment)), answers).toList();
  }

  /** The name with what came of the case: a stop, or else the first cause. */
  @JsonIgnore
  String withResult() {
    String first =
        ranking.entrySet().stream()
            .findFirst()
            .map(r -> r.getKey() + " " + Math.round(r.getValue() * 100) + " %")
            .orElse("no cause");
    return name + " (" + (stops.isEmpty() ? first : "stop " + String.join(", ", stops)) + ")";
  }

  /** Whether the result is right although nothing was looked at for it; that proves little. */
  @JsonIgnore
  boolean rightUnseen() {
    return right.orElse(false) && stops.isEmpty() && path.stream().allMatch(Account::isRepair);
  }

  /** Whether a repair was made before anything was looked at. */
  @JsonIgnore
  boolean mendedUnseen() {
    return !path.isEmpty() && isRepair(path.get(0));
  }

  private static boolean isRepair(String step) {
    return step.startsWith("repair ");
  }

  /** The cause that is most probable at the end. */
  @JsonIgnore
  Optional<String> first() {
    return ranking.keySet().stream().findFirst();
  }

  /** The causes whose evidence is included. */
  @JsonIgnore
  Set<String> inView() {
    Set<String> causes = new LinkedHashSet<>();
    evidence.forEach(w -> causes.addAll(w.decibans().keySet()));
    return causes;
  }
}
