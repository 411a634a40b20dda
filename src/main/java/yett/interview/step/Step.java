package yett.interview.step;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.knowledge.Caution;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.Place;
import yett.knowledge.Pressing;
import yett.knowledge.Repair;
import yett.knowledge.SetUp;
import yett.knowledge.SiteQuestion;
import yett.knowledge.Stop;
import yett.plan.Advice;
import yett.rules.Conclusion.Contradiction;
import yett.rules.Conclusion.Expectation;

/** What the person is asked or told next. */
public sealed interface Step {

  /** One method for each kind of step, so that a new kind has to be handled wherever all are. */
  interface Visitor<R> {
    R askDangers(AskDangers step);

    R askSite(AskSite step);

    R askComplaints(AskComplaints step);

    R askPressing(AskPressing step);

    R askHistory(AskHistory step);

    R ask(Ask step);

    R lookRound(LookRound step);

    R enter(Enter step);

    R leave(Leave step);

    R mend(Mend step);

    R retest(Retest step);

    R settle(Settle step);

    R decideFailedProof(DecideFailedProof step);

    R takeStock(TakeStock step);

    R makeSafe(MakeSafe step);

    R handOver(HandOver step);

    R closeSolved(CloseSolved step);

    R closeRepaired(CloseRepaired step);

    R finished(Finished step);
  }

  <R> R accept(Visitor<R> visitor);

  /** Id of the check or repair that the step is about; empty for any other step. */
  default String card() {
    return "";
  }

  /** Ids of all checks and repairs in the step. */
  default List<String> cards() {
    return card().isEmpty() ? List.of() : List.of(card());
  }

  /** Set-ups that the step needs; empty if it is not work. */
  default List<String> needs() {
    return List.of();
  }

  /** What to be careful about in this step, before it is done; empty if it has no hazards. */
  default List<Caution> cautions() {
    return List.of();
  }

  /** The alternatives with their values, where the plan chose the step. */
  default Optional<Advice> advice() {
    return Optional.empty();
  }

  /**
   * Asks whether any of these dangers is present. One answer covers all of them; dangers come
   * before everything else.
   */
  record AskDangers(List<Check> dangers) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.askDangers(this);
    }
  }

  record AskSite(List<SiteQuestion> questions) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.askSite(this);
    }
  }

  /**
   * Asks what is wrong with the gate.
   *
   * @param said complaints that an answer about dangers already tells; they are not asked again
   */
  record AskComplaints(List<Check> complaints, List<Check> said) implements Step {
    /** The event that records these complaints. */
    public Event.Complained reported(List<String> picked) {
      return new Event.Complained(
          Stream.concat(said.stream().map(Check::id), picked.stream()).distinct().toList());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.askComplaints(this);
    }
  }

  /** Asks whether anything makes the call urgent. Callers only. */
  record AskPressing(List<Pressing> pressing) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.askPressing(this);
    }
  }

  record AskHistory(List<History> histories) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.askHistory(this);
    }
  }

  /**
   * Asks one check.
   *
   * @param cautions about the check's own hazards
   * @param expectation the usual range for this gate, where the rules give one
   * @param advice the alternatives; empty for a proof or follow-up work
   */
  record Ask(
      Check check,
      List<Caution> cautions,
      Optional<Expectation> expectation,
      Optional<Advice> advice,
      Occasion occasion)
      implements Step {
    @Override
    public String card() {
      return check.id();
    }

    @Override
    public List<String> needs() {
      return check.needs();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.ask(this);
    }
  }

  /**
   * Asks several looks at one place together: each counts as ordinary unless something else is said
   * about it.
   *
   * @param looks two to nine, each as it would be asked alone; the one that the plan chose comes
   *     first
   * @param needs set-ups in force, those of the place and of all looks
   * @param cautions about the hazards of all looks
   */
  record LookRound(Place place, List<Ask> looks, List<String> needs, List<Caution> cautions)
      implements Step {
    /** Most looks in a round; nobody can keep more in mind. */
    public static final int MOST = 9;

    /** Most letters of looks and cautions, so that they fit on a page of 24 lines of 80. */
    private static final int MOST_LETTERS = 880;

    public Ask first() {
      return looks.get(0);
    }

    /** Whether these looks fit on one page. */
    public static boolean isOnePage(List<Ask> looks) {
      int letters =
          looks.stream()
                  .map(Ask::check)
                  .mapToInt(c -> c.ask().length() + c.outcomes().get(0).text().length())
                  .sum()
              + looks.stream()
                  .flatMap(l -> l.cautions().stream())
                  .distinct()
                  .mapToInt(c -> c.avoid().length())
                  .sum();
      return looks.size() <= MOST && letters <= MOST_LETTERS;
    }

    /** Minutes of all looks. */
    public double minutes() {
      return looks.stream().mapToDouble(l -> l.check().minutes()).sum();
    }

    @Override
    public String card() {
      return first().card();
    }

    @Override
    public List<String> cards() {
      return looks.stream().map(Step::card).toList();
    }

    @Override
    public Optional<Advice> advice() {
      return first().advice();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.lookRound(this);
    }
  }

  /**
   * Enters a set-up: its cautions are read, then its steps confirmed in order.
   *
   * @param purpose what it is entered for
   * @param again whether it is already in force and is only confirmed by somebody who came to the
   *     case
   * @param instead set-ups in force that it replaces
   */
  record Enter(
      SetUp setUp, List<Caution> cautions, Purpose purpose, boolean again, List<String> instead)
      implements Step {
    public Enter(SetUp setUp, List<Caution> cautions, Purpose purpose) {
      this(setUp, cautions, purpose, false, List.of());
    }

    /** The event that records it as entered. */
    public Event done() {
      return new Event.SetUpEntered(setUp.id(), purpose.card(), instead);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.enter(this);
    }
  }

  /**
   * Leaves a set-up; its steps are confirmed in order.
   *
   * @param purpose what it is left for
   */
  record Leave(SetUp setUp, Purpose purpose) implements Step {
    /** The event that records it as left. */
    public Event done() {
      return new Event.SetUpLeft(setUp.id(), purpose.card());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.leave(this);
    }
  }

  /**
   * Asks for a repair.
   *
   * @param plan the repairs in order, this one first; empty for follow-up work
   */
  record Mend(Repair repair, List<Caution> cautions, Optional<Advice> plan, Occasion occasion)
      implements Step {
    @Override
    public String card() {
      return repair.id();
    }

    @Override
    public List<String> needs() {
      return repair.needs();
    }

    @Override
    public Optional<Advice> advice() {
      return plan;
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.mend(this);
    }
  }

  record Retest() implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.retest(this);
    }
  }

  /** Asks the person to settle two answers that cannot both be right. */
  record Settle(CaseState.Answered first, CaseState.Answered second, Contradiction contradiction)
      implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.settle(this);
    }
  }

  /**
   * Further questions gain little: the person chooses to go on, to repair on suspicion, or to hand
   * over.
   *
   * @param suspects causes that may still be present, the likeliest first
   * @param next the check that would come next
   */
  record TakeStock(List<Suspect> suspects, Check next) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.takeStock(this);
    }
  }

  /** A proof failed: the person chooses to go on looking, or to leave the gate out of use. */
  record DecideFailedProof(Check proof) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.decideFailedProof(this);
    }
  }

  /**
   * A danger to people: nothing else is offered until it is made safe.
   *
   * @param leaves set-ups in force once that is done; empty if this person changes none
   */
  record MakeSafe(Stop stop, List<String> now, String because, Optional<List<String>> leaves)
      implements Step {
    /** The event that records it as made safe. */
    public Event done() {
      return new Event.MadeSafe(stop.id(), leaves);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.makeSafe(this);
    }
  }

  /**
   * Hands the case over, because nothing is left to do here.
   *
   * @param ending how the case would close
   */
  record HandOver(Ending ending, HandOverReason because) implements Step {
    /** Whether the case stays open because somebody else investigates. */
    public boolean staysOpen() {
      return because instanceof HandOverReason.Stopped stopped && stopped.inquiry();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.handOver(this);
    }
  }

  /**
   * Closes a call whose gate runs as usual after a repair that a caller may do.
   *
   * @param watch what the caller should watch for, and when to call again
   */
  record CloseSolved(List<String> watch) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.closeSolved(this);
    }
  }

  /**
   * Closes a case in which every proof passed.
   *
   * @param ending repaired, nothing wrong found, or inspected
   * @param last what has still to be done to give the gate back to its users, in order
   */
  record CloseRepaired(Ending ending, List<String> last) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.closeRepaired(this);
    }
  }

  record Finished(Ending ending) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.finished(this);
    }
  }
}
