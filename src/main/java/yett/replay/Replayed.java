package yett.replay;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.interview.moment.Moment;

/**
 * The result of running a recorded case. It is written as JSON in the form of {@code
 * shared/replay-result.schema.json}, without the grouping into these records; see docs/replay.md.
 *
 * @param keptAside whether nobody may tune the cards to this case
 * @param moment the case at its end, for records; not in the JSON
 */
public record Replayed(
    @JsonUnwrapped Outset outset,
    List<Taken> steps,
    @JsonUnwrapped Found found,
    @JsonUnwrapped Done done,
    @JsonUnwrapped End end,
    @JsonUnwrapped Noticed noticed,
    boolean keptAside,
    Judged judged,
    @JsonIgnore Moment moment) {

  /** The input of the run. */
  public record Outset(
      @JsonProperty("case") String name,
      String file,
      String story,
      String ruleBase,
      String person,
      List<SiteAnswer> site,
      List<String> complaints,
      List<String> history) {}

  /**
   * The belief at the end.
   *
   * @param ranking causes with a chance of at least 0.001 of having been present at the call-out,
   *     the most probable first
   * @param effects effects of the first of these causes that were seen or looked for
   */
  public record Found(List<Ranked> ranking, List<Effected> effects) {}

  /**
   * The work that was done.
   *
   * @param stops those that were raised
   */
  public record Done(List<Mended> repairs, List<String> stops, List<Proved> proofs) {}

  /**
   * The ending of the run.
   *
   * @param ended {@code repaired}, {@code solved}, {@code handed-over}, {@code out-of-service},
   *     {@code made-safe}, or {@code unfinished} if it did not end
   * @param expectedMinutes the plan's first estimate; it includes penalties for hazards, and parts
   *     and handing over
   * @param spentMinutes minutes by the cards for the work done, changes of set-up included
   */
  public record End(String ended, String because, double expectedMinutes, double spentMinutes) {}

  /**
   * Remarks on the run.
   *
   * @param remarks of the rules, and answers that hardly fit together
   * @param notes assumptions that the replay had to make
   * @param unsafe things that must never happen but did; see {@link
   *     yett.interview.watch.SafetyWatch}
   */
  public record Noticed(
      List<String> remarks, List<Kept> contradictions, List<String> notes, List<String> unsafe) {}

  /** A copy without the moment, which holds a whole belief: for keeping many results. */
  public Replayed withoutMoment() {
    return new Replayed(outset, steps, found, done, end, noticed, keptAside, judged, null);
  }

  public String name() {
    return outset.name;
  }

  public String file() {
    return outset.file;
  }

  public String story() {
    return outset.story;
  }

  public String person() {
    return outset.person;
  }

  public List<SiteAnswer> site() {
    return outset.site;
  }

  public List<String> complaints() {
    return outset.complaints;
  }

  public List<Ranked> ranking() {
    return found.ranking;
  }

  public List<Effected> effects() {
    return found.effects;
  }

  public List<Mended> repairs() {
    return done.repairs;
  }

  public List<String> stops() {
    return done.stops;
  }

  public List<Proved> proofs() {
    return done.proofs;
  }

  public String ended() {
    return end.ended;
  }

  public String because() {
    return end.because;
  }

  public double expectedMinutes() {
    return end.expectedMinutes;
  }

  public double spentMinutes() {
    return end.spentMinutes;
  }

  public List<String> remarks() {
    return noticed.remarks;
  }

  public List<Kept> contradictions() {
    return noticed.contradictions;
  }

  public List<String> notes() {
    return noticed.notes;
  }

  public List<String> unsafe() {
    return noticed.unsafe;
  }

  /**
   * An answer to a site question.
   *
   * @param usual whether the file left it open and the usual answer was taken
   */
  public record SiteAnswer(String question, String answer, boolean usual) {}

  /**
   * One step.
   *
   * @param kind {@code danger}, {@code site}, {@code complaints}, {@code history}, {@code check},
   *     {@code look-round}, {@code proof}, {@code enter}, {@code leave}, {@code repair}, {@code
   *     retest}, {@code settle}, {@code failed-proof}, {@code make-safe}, {@code close}
   * @param id of the card, or of the place of a look-round; the kind itself where there is none
   * @param answer what was answered or done
   * @param assumed whether the file left it open
   * @param meaning what the answer was taken to mean; empty if it was not used as evidence
   * @param belief chance of each cause after it, the most probable first
   * @param minutes of the card, or of all looks
   * @param looks those of a look-round, in their order; empty for any other step
   */
  public record Taken(
      int step,
      String kind,
      String id,
      String asked,
      Why why,
      String answer,
      boolean assumed,
      Optional<Meaning> meaning,
      Map<String, Double> belief,
      double minutes,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Looked> looks) {}

  /**
   * One look of a round.
   *
   * @param assumed whether the file left it open
   * @param meaning what the answer was taken to mean; empty if it was not used as evidence
   */
  public record Looked(String check, String answer, boolean assumed, Optional<Meaning> meaning) {}

  /**
   * Why this step was chosen.
   *
   * @param words one sentence without a full stop
   * @param saves average minutes that a check saves compared with repairing at once
   * @param next the second-best check
   */
  public record Why(
      String words, Optional<Double> saves, Optional<RunnerUp> next, List<String> plan) {
    static Why of(String words) {
      return new Why(words, Optional.empty(), Optional.empty(), List.of());
    }
  }

  /** The second-best check. */
  public record RunnerUp(String check, double saves) {}

  /**
   * What an answer was taken to mean, and why.
   *
   * @param also other outcomes that are true at once
   */
  public record Meaning(
      String outcome,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> also,
      String words,
      String reason) {}

  /** A cause with the chance that it was present at the call-out. */
  public record Ranked(String cause, double chance) {}

  /**
   * An effect of the first cause.
   *
   * @param chance of the effect when that cause alone is present
   * @param seen looks that show it
   * @param ordinary looks that would show it and do not
   */
  public record Effected(String effect, double chance, List<Look> seen, List<Look> ordinary) {}

  /** A look and what it showed. */
  public record Look(String check, String outcome) {}

  /**
   * A repair that was done.
   *
   * @param cured result of the retest after it; empty if there was none
   */
  public record Mended(String repair, Optional<Boolean> cured) {}

  /** A proof and its result: {@code pass}, {@code fail} or {@code cannot-tell}. */
  public record Proved(String proof, String result) {}

  /** Two answers that cannot both be right and were both confirmed. */
  public record Kept(String first, String second, String because) {}

  /**
   * Comparison of the run with what the file says is right; empty where the file says nothing.
   *
   * @param cause whether the first cause is the expected one or, if none is expected, one of the
   *     true causes
   * @param inFirstThree whether one of the first three causes is
   * @param repairs whether all right repairs were done
   * @param needless repairs that are neither among the right ones nor follow-up work of them
   * @param stop whether exactly the expected stop was raised
   */
  public record Judged(
      Optional<Boolean> cause,
      Optional<Boolean> inFirstThree,
      Optional<Boolean> repairs,
      List<String> needless,
      Optional<Boolean> stop) {}
}
