package yett.replay;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.interview.Moment;

/**
 * What became of a recorded case. Written as JSON in the form of {@code
 * shared/replay-result.schema.json}, without these groups; see docs/replay.md.
 *
 * @param keptAside whether the case is one that nobody may tune the cards by
 * @param moment the case as it was left, for records; not in the JSON
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

  /** What was known before the first step. */
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
   * What was believed in the end.
   *
   * @param ranking causes by falling chance that they were there at the call-out, those of 0.001
   *     and more
   * @param effects what the first of these causes leads to, as far as it was seen or looked for
   */
  public record Found(List<Ranked> ranking, List<Effected> effects) {}

  /**
   * What was done about it.
   *
   * @param stops those that were raised
   */
  public record Done(List<Mended> repairs, List<String> stops, List<Proved> proofs) {}

  /**
   * How it ended.
   *
   * @param ended {@code repaired}, {@code solved}, {@code handed-over}, {@code out-of-service},
   *     {@code made-safe}, or {@code unfinished} if it went on without end
   * @param expectedMinutes what the plan expected when it was first asked; weights for hazards,
   *     parts and handing over are in it
   * @param spentMinutes minutes of the cards for what was done, changes of set-up included
   */
  public record End(String ended, String because, double expectedMinutes, double spentMinutes) {}

  /**
   * What there is to say about the run.
   *
   * @param remarks what the rules had to say, and answers that hardly fit together
   * @param notes where the replay had to help itself
   * @param unsafe what must never be and yet came up; see {@link yett.interview.SafetyWatch}
   */
  public record Noticed(
      List<String> remarks, List<Kept> contradictions, List<String> notes, List<String> unsafe) {}

  /** The same without the case itself, which holds a whole belief: for keeping many. */
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
   * @param answer what was said or done
   * @param assumed whether the file left it open
   * @param meaning what the answer was taken to mean; empty if it was not weighed
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
   * @param meaning what the answer was taken to mean; empty if it was not weighed
   */
  public record Looked(String check, String answer, boolean assumed, Optional<Meaning> meaning) {}

  /**
   * Why this step and no other.
   *
   * @param words one sentence without a full stop
   * @param saves minutes that a check saves on average against repairing at once
   * @param next the check that came second
   */
  public record Why(
      String words, Optional<Double> saves, Optional<RunnerUp> next, List<String> plan) {
    static Why of(String words) {
      return new Why(words, Optional.empty(), Optional.empty(), List.of());
    }
  }

  /** The check that came second. */
  public record RunnerUp(String check, double saves) {}

  /** What an answer was taken to mean, and by which reason. */
  public record Meaning(String outcome, String words, String reason) {}

  /** A cause and the chance that it was there at the call-out. */
  public record Ranked(String cause, double chance) {}

  /**
   * An effect of the cause that came first.
   *
   * @param chance that it is there when that cause alone is
   * @param seen looks that show it
   * @param ordinary looks that would show it and do not
   */
  public record Effected(String effect, double chance, List<Look> seen, List<Look> ordinary) {}

  /** A look and what it showed. */
  public record Look(String check, String outcome) {}

  /**
   * A repair that was done.
   *
   * @param cured what the try after it showed; empty if it was not tried
   */
  public record Mended(String repair, Optional<Boolean> cured) {}

  /** A proof and its result: {@code pass}, {@code fail} or {@code cannot-tell}. */
  public record Proved(String proof, String result) {}

  /** Two answers that cannot both be right and were both confirmed. */
  public record Kept(String first, String second, String because) {}

  /**
   * How the run compares with what the file says is right; empty where the file says nothing.
   *
   * @param cause whether the first cause is the expected one, or, where none is expected, one of
   *     those that are really there
   * @param inFirstThree the same for the first three causes
   * @param repairs whether all right repairs were done
   * @param needless repairs that were done though they are not among the right ones nor entailed by
   *     them
   * @param stop whether exactly the expected stop was raised
   */
  public record Judged(
      Optional<Boolean> cause,
      Optional<Boolean> inFirstThree,
      Optional<Boolean> repairs,
      List<String> needless,
      Optional<Boolean> stop) {}
}
