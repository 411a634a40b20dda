package yett.interview.event;

import static java.util.Objects.requireNonNull;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yett.calculation.ForceCurve;
import yett.calculation.ForceSample;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/**
 * Something that happened in a case. A case is the list of its events; an event is never changed.
 */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "type")
@JsonSubTypes({
  @JsonSubTypes.Type(value = Event.Opened.class, name = "opened"),
  @JsonSubTypes.Type(value = Event.SiteAnswered.class, name = "site-answered"),
  @JsonSubTypes.Type(value = Event.SiteTaken.class, name = "site-taken"),
  @JsonSubTypes.Type(value = Event.Said.class, name = "said"),
  @JsonSubTypes.Type(value = Event.Complained.class, name = "complained"),
  @JsonSubTypes.Type(value = Event.Pressed.class, name = "pressed"),
  @JsonSubTypes.Type(value = Event.Happened.class, name = "happened"),
  @JsonSubTypes.Type(value = Event.Answered.class, name = "answered"),
  @JsonSubTypes.Type(value = Event.SetUpEntered.class, name = "set-up-entered"),
  @JsonSubTypes.Type(value = Event.SetUpLeft.class, name = "set-up-left"),
  @JsonSubTypes.Type(value = Event.Repaired.class, name = "repaired"),
  @JsonSubTypes.Type(value = Event.Retested.class, name = "retested"),
  @JsonSubTypes.Type(value = Event.Reopened.class, name = "reopened"),
  @JsonSubTypes.Type(value = Event.Kept.class, name = "kept"),
  @JsonSubTypes.Type(value = Event.Noted.class, name = "noted"),
  @JsonSubTypes.Type(value = Event.Retracted.class, name = "retracted"),
  @JsonSubTypes.Type(value = Event.Corrected.class, name = "corrected"),
  @JsonSubTypes.Type(value = Event.MadeSafe.class, name = "made-safe"),
  @JsonSubTypes.Type(value = Event.GaveUp.class, name = "gave-up"),
  @JsonSubTypes.Type(value = Event.Closed.class, name = "closed"),
  @JsonSubTypes.Type(value = Event.TakenUp.class, name = "taken-up"),
  @JsonSubTypes.Type(value = Event.Returned.class, name = "returned"),
  @JsonSubTypes.Type(value = Event.DangersAgain.class, name = "dangers-again"),
  @JsonSubTypes.Type(value = Event.AskedFor.class, name = "asked-for"),
  @JsonSubTypes.Type(value = Event.WentOn.class, name = "went-on"),
  @JsonSubTypes.Type(value = Event.Tended.class, name = "tended"),
  @JsonSubTypes.Type(value = Event.ForceTaken.class, name = "force-taken")
})
public sealed interface Event {

  /** One method for each kind of event, so that a new kind has to be handled wherever all are. */
  interface Visitor<R> {
    R opened(Opened event);

    R siteAnswered(SiteAnswered event);

    R siteTaken(SiteTaken event);

    R said(Said event);

    R complained(Complained event);

    R pressed(Pressed event);

    R happened(Happened event);

    R answered(Answered event);

    R setUpEntered(SetUpEntered event);

    R setUpLeft(SetUpLeft event);

    R repaired(Repaired event);

    R retested(Retested event);

    R reopened(Reopened event);

    R kept(Kept event);

    R noted(Noted event);

    R retracted(Retracted event);

    R corrected(Corrected event);

    R madeSafe(MadeSafe event);

    R gaveUp(GaveUp event);

    R closed(Closed event);

    R takenUp(TakenUp event);

    R returned(Returned event);

    R dangersAgain(DangersAgain event);

    R askedFor(AskedFor event);

    R wentOn(WentOn event);

    R tended(Tended event);

    R forceTaken(ForceTaken event);

    R unread(Unread event);
  }

  <R> R accept(Visitor<R> visitor);

  /**
   * An event that "back" can retract. Others stay: a set-up exists in the world, and a note is not
   * an answer. A new kind of event has to declare that it can be undone.
   */
  sealed interface Undoable extends Event {}

  /**
   * @param site id of the gate
   * @param ruleBase fingerprint of the rule base at the time
   * @param inspection what is inspected, if no fault is looked for
   * @param earlier readings that were known of the gate when the case was opened
   * @param versions names and versions of the rule base and its add-ons at the time
   */
  record Opened(
      String site,
      Role role,
      String ruleBase,
      @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<InspectionKind> inspection,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Earlier> earlier,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> versions)
      implements Event {
    public Opened {
      requireNonNull(site, "site");
      requireNonNull(role, "role");
      requireNonNull(ruleBase, "ruleBase");
      inspection = inspection == null ? Optional.empty() : inspection; // null before it was kept
      earlier = earlier == null ? List.of() : List.copyOf(earlier);
      versions = versions == null ? List.of() : List.copyOf(versions);
    }

    /** With the names and versions of a rule base. */
    public static Opened with(
        String site,
        Role role,
        RuleBase base,
        Optional<InspectionKind> inspection,
        List<Earlier> earlier) {
      return new Opened(site, role, base.fingerprint(), inspection, earlier, base.versions());
    }

    /** By a rule base without a version. */
    public Opened(
        String site,
        Role role,
        String ruleBase,
        Optional<InspectionKind> inspection,
        List<Earlier> earlier) {
      this(site, role, ruleBase, inspection, earlier, List.of());
    }

    public Opened(String site, Role role, String ruleBase) {
      this(site, role, ruleBase, Optional.empty(), List.of(), List.of());
    }

    /** The baseline reading of a check, if there is one. */
    public Optional<Earlier> baseline(String check) {
      return earlier.stream().filter(e -> e.baseline() && e.check().equals(check)).findFirst();
    }

    /** The most recent earlier reading of a check, if there is one. */
    public Optional<Earlier> last(String check) {
      return earlier.stream().filter(e -> !e.baseline() && e.check().equals(check)).findFirst();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.opened(this);
    }
  }

  /**
   * A reading from an earlier visit to the gate.
   *
   * @param value in the canonical unit of what the check measures
   * @param baseline whether later readings are compared with it, because the gate was in order then
   * @param temperature temperature at the gate as it was told, degC
   */
  record Earlier(
      String check,
      double value,
      Instant at,
      boolean baseline,
      @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Double> temperature) {
    public Earlier {
      requireNonNull(check, "check");
      requireNonNull(at, "at");
      temperature = temperature == null ? Optional.empty() : temperature; // null before it was kept
    }

    public Earlier(String check, double value, Instant at, boolean baseline) {
      this(check, value, at, baseline, Optional.empty());
    }
  }

  /**
   * An answer to a site question that differs from the usual one: a choice's id, or a reading as
   * typed.
   */
  record SiteAnswered(String question, String answer) implements Undoable {
    public SiteAnswered {
      requireNonNull(question, "question");
      requireNonNull(answer, "answer");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.siteAnswered(this);
    }
  }

  /** The site details are complete. */
  record SiteTaken() implements Undoable {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.siteTaken(this);
    }
  }

  /** What a caller said in their own words. It is kept, but is not evidence. */
  record Said(String words) implements Undoable {
    public Said {
      requireNonNull(words, "words");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.said(this);
    }
  }

  record Complained(List<String> complaints) implements Undoable {
    public Complained {
      complaints = List.copyOf(complaints);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.complained(this);
    }
  }

  /** The matters that make a visit urgent, of those asked: none, one or several. */
  record Pressed(List<String> pressing) implements Undoable {
    public Pressed {
      pressing = List.copyOf(pressing);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.pressed(this);
    }
  }

  record Happened(List<String> histories) implements Undoable {
    public Happened {
      histories = List.copyOf(histories);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.happened(this);
    }
  }

  /**
   * @param taken when it was given in the inspection from which the case was begun; empty for an
   *     answer of this case
   */
  record Answered(
      String check,
      Answer answer,
      @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Instant> taken)
      implements Undoable {
    public Answered {
      requireNonNull(check, "check");
      requireNonNull(answer, "answer");
      taken = taken == null ? Optional.empty() : taken; // null before it was kept
    }

    public Answered(String check, Answer answer) {
      this(check, answer, Optional.empty());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.answered(this);
    }
  }

  /**
   * A set-up was entered: its cautions and steps were confirmed, and it is in force.
   *
   * @param next id of the check or repair that it was entered for; empty if for none
   * @param instead set-ups that this one replaces: they are no longer in force, without having been
   *     left
   */
  record SetUpEntered(
      String setUp, String next, @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> instead)
      implements Event {
    public SetUpEntered {
      requireNonNull(setUp, "setUp");
      instead = instead == null ? List.of() : List.copyOf(instead); // events before this was kept
    }

    public SetUpEntered(String setUp, String next) {
      this(setUp, next, List.of());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.setUpEntered(this);
    }
  }

  /**
   * @param next id of the check or repair that it was left for; empty if for none
   */
  record SetUpLeft(String setUp, String next) implements Event {
    public SetUpLeft {
      requireNonNull(setUp, "setUp");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.setUpLeft(this);
    }
  }

  /**
   * @param done false if it could not be done
   * @param why why it could not be done, as typed; may be empty
   */
  record Repaired(
      String repair, boolean done, @JsonInclude(JsonInclude.Include.NON_EMPTY) String why)
      implements Undoable {
    public Repaired {
      requireNonNull(repair, "repair");
      why = why == null ? "" : why; // null before it was kept
    }

    public Repaired(String repair, boolean done) {
      this(repair, done, "");
    }

    /** What became of it, to be put after its name. */
    public String words() {
      return done ? "done" : "could not be done" + (why.isEmpty() ? "" : ": " + why);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.repaired(this);
    }
  }

  /**
   * The gate was tried after a repair.
   *
   * @param same after a failure, whether the gate did everything that was reported; empty if nobody
   *     could tell how it failed
   * @param left after a failure with only part of it, the complaints that are left
   * @param anew complaints that nobody made before
   */
  record Retested(
      boolean cured,
      @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Boolean> same,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> left,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<String> anew)
      implements Undoable {
    public Retested {
      same = cured || same == null ? Optional.empty() : same; // events before this was kept: null
      left = cured || left == null ? List.of() : List.copyOf(left);
      anew = cured || anew == null ? List.of() : List.copyOf(anew);
    }

    public Retested(boolean cured) {
      this(cured, Optional.empty());
    }

    public Retested(boolean cured, Optional<Boolean> same) {
      this(cured, same, List.of(), List.of());
    }

    /** A retest in which the gate shows some of what was reported, and perhaps something new. */
    public static Retested left(List<String> left, List<String> anew) {
      return new Retested(false, Optional.of(false), left, anew);
    }

    /** The result as words about the gate. */
    public String words() {
      if (cured) {
        return "ran";
      }
      if (!left.isEmpty()) {
        return "ran better, but not as it should";
      }
      return same.map(s -> s ? "failed as reported" : "failed in another way")
          .orElse("still failed");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.retested(this);
    }
  }

  /** A proof failed and the search for the fault goes on. */
  record Reopened(String proof) implements Undoable {
    public Reopened {
      requireNonNull(proof, "proof");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.reopened(this);
    }
  }

  /** Two answers that contradict each other, both confirmed. */
  record Kept(long first, long second) implements Undoable {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.kept(this);
    }
  }

  /**
   * A note.
   *
   * @param about id of the check that it is a remark on; empty for a note on the case
   */
  record Noted(String text, @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<String> about)
      implements Event {
    /** The note for an urgency that nobody could tell. */
    public static final String URGENCY_UNTOLD = "Nobody could say how urgent it is.";

    /** The note that a child rings. */
    public static final String CHILD =
        "A child rang, and no grown-up was on the line: it was told to fetch one and to stay away.";

    /** The beginning of a note on a gate that is forced; the caller's words follow. */
    public static final String FORCED = "Forced by hand or by a vehicle, or about to be: ";

    /** The beginning of a note on a gate that somebody holds; the caller's words follow. */
    public static final String HELD = "Held by hand; they were told to let go: ";

    /**
     * The beginning of a note with a caller's words that were taken up when they were said. They
     * are not {@link Said}, because what is said is heard once more later.
     */
    public static final String HEARD = "The caller said: ";

    public Noted {
      requireNonNull(text, "text");
      about = about == null ? Optional.empty() : about; // null before it was kept
    }

    public Noted(String text) {
      this(text, Optional.empty());
    }

    /** Whether it says that nobody could tell how urgent it is. */
    public boolean tellsNoUrgency() {
      return text.equals(URGENCY_UNTOLD);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.noted(this);
    }
  }

  /** An earlier event no longer counts. */
  record Retracted(long event) implements Event {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.retracted(this);
    }
  }

  /** An earlier answer is replaced by another; the new one counts in the old one's place. */
  record Corrected(long event, Answer answer) implements Undoable {
    public Corrected {
      requireNonNull(answer, "answer");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.corrected(this);
    }
  }

  /**
   * What a stop demands was done or passed on. Taken back, it counts as not done; the set-ups stay
   * as they were left, because they exist at the real gate.
   *
   * @param setUps set-ups in force from then on, the one that this stop demands last; empty if none
   *     changed
   */
  record MadeSafe(
      String stop, @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<List<String>> setUps)
      implements Undoable {
    public MadeSafe {
      requireNonNull(stop, "stop");
      setUps =
          setUps == null ? Optional.empty() : setUps.map(List::copyOf); // null before it was kept
    }

    public MadeSafe(String stop) {
      this(stop, Optional.empty());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.madeSafe(this);
    }
  }

  /** The person wants to hand the case over. */
  record GaveUp(String why) implements Undoable {
    public GaveUp {
      requireNonNull(why, "why");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.gaveUp(this);
    }
  }

  record Closed(Ending ending) implements Event {
    public Closed {
      requireNonNull(ending, "ending");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.closed(this);
    }
  }

  /** The person wants to go through the dangers once more. */
  record DangersAgain() implements Undoable {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.dangersAgain(this);
    }
  }

  /** The person wants to go on although further questions gain little. */
  record WentOn() implements Undoable {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.wentOn(this);
    }
  }

  /** The person wants this check or repair next, whatever the plan says. */
  record AskedFor(String check) implements Undoable {
    public AskedFor {
      requireNonNull(check, "check");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.askedFor(this);
    }
  }

  /** A case that was handed over or left is taken up again. */
  record TakenUp() implements Event {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.takenUp(this);
    }
  }

  /**
   * Somebody continues an open case after an absence or in place of another. Nobody has seen
   * whether the gate is still as it was left: dangers are looked for again, and what could not be
   * done may be possible now.
   */
  record Returned() implements Event {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.returned(this);
    }
  }

  /**
   * What the desk did about a call. It is kept with the answers, but is not evidence.
   *
   * @param words details; may be empty, and may have been deleted to forget personal data
   * @param due by when, ISO 8601 in UTC; empty if no time was named
   */
  record Tended(Tending what, String words, @JsonInclude(JsonInclude.Include.NON_EMPTY) String due)
      implements Event {
    public Tended {
      requireNonNull(what, "what");
      requireNonNull(words, "words");
      due = due == null ? "" : due;
    }

    public Tended(Tending what, String words) {
      this(what, words, "");
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.tended(this);
    }
  }

  /** The height on the leaf at which a force is measured. */
  enum Height {
    LOW("50 mm above the ground"),
    MIDDLE("at the middle"),
    TOP("300 mm below the top");

    private final String words;

    Height(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    /** The height for a typed low, middle or top. */
    public static Optional<Height> of(String typed) {
      return Stream.of(values()).filter(h -> h.name().equalsIgnoreCase(typed)).findFirst();
    }
  }

  /**
   * One measurement of the force of the leaf on a meter in its way.
   *
   * @param proof id of the proof in which it was made
   * @param gap mm left at the impact
   * @param peak N
   * @param above s above 150 N
   * @param left N 5 s after contact; empty if no record lasted that long
   * @param curve alternately time from contact (s) and force (N), for drawing; empty if the values
   *     were typed
   */
  record ForceTaken(
      String proof,
      int gap,
      Height height,
      double peak,
      double above,
      @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Double> left,
      @JsonInclude(JsonInclude.Include.NON_EMPTY) List<Double> curve)
      implements Undoable {
    /** Gaps (mm) at which EN 12453 has the force measured (summaries of test houses). */
    public static final List<Integer> GAPS = List.of(50, 300, 500);

    /** Most points of a curve that are kept; a drawing shows no more. */
    public static final int MOST_POINTS = 200;

    public ForceTaken {
      requireNonNull(proof, "proof");
      requireNonNull(height, "height");
      left = left == null ? Optional.empty() : left;
      curve = curve == null ? List.of() : List.copyOf(curve);
    }

    /** Reduces a curve for drawing: the greatest force in each short interval. */
    public static List<Double> thinned(ForceCurve curve, double contact) {
      double step = (curve.end() - curve.start()) / MOST_POINTS;
      List<Double> points = new ArrayList<>();
      ForceSample greatest = null;
      int bin = 0;
      for (ForceSample sample : curve.samples()) {
        int now = (int) Math.min(MOST_POINTS - 1.0, (sample.time() - curve.start()) / step);
        if (greatest != null && now > bin) {
          add(points, greatest, contact);
          greatest = null;
        }
        bin = now;
        greatest = greatest == null || sample.force() > greatest.force() ? sample : greatest;
      }
      add(points, greatest, contact);
      return List.copyOf(points);
    }

    private static void add(List<Double> points, ForceSample sample, double contact) {
      points.add(Math.round(1000 * (sample.time() - contact)) / 1000.0);
      points.add(Math.round(10 * sample.force()) / 10.0);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.forceTaken(this);
    }
  }

  /**
   * A stored event that this version of the program cannot read. It is kept unchanged.
   *
   * @param kind as it is stored
   * @param text as it is stored
   */
  record Unread(String kind, String text) implements Undoable {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.unread(this);
    }
  }
}
