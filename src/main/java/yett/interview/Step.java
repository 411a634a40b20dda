package yett.interview;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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

  /** What each kind of step comes to: a new kind has to be thought of wherever all are. */
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

  /** Id of the check or repair that it is about; empty for any other step. */
  default String card() {
    return "";
  }

  /** All that is asked, looked at or done in it. */
  default List<String> cards() {
    return card().isEmpty() ? List.of() : List.of(card());
  }

  /** Set-ups that it needs; none if it is no work. */
  default List<String> needs() {
    return List.of();
  }

  /** What the choice was between, where the plan chose it. */
  default Optional<Advice> advice() {
    return Optional.empty();
  }

  /** Is any of these so? One answer for all of them: dangers come before everything else. */
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
   * What is wrong with the gate?
   *
   * @param said what an answer about dangers said already: it is not asked once more
   */
  record AskComplaints(List<Check> complaints, List<Check> said) implements Step {
    /** What was reported, when these were picked. */
    public Event.Complained reported(List<String> picked) {
      return new Event.Complained(
          Stream.concat(said.stream().map(Check::id), picked.stream()).distinct().toList());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.askComplaints(this);
    }
  }

  /** Does anything at the site make it urgent? Asked of callers only. */
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
   * @param cautions those of the check's own hazards
   * @param expectation the usual range for this gate, where the rules give one
   * @param advice what the choice was between; empty for a proof or for work that a repair entails
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
   * Several looks at one place, made in one go and answered together: each is taken as ordinary
   * unless something else is said of it.
   *
   * @param looks two to nine, each as it would be asked alone: first the one that the plan chose
   * @param needs set-ups that are in force, those of the place and of all looks
   * @param cautions those of the hazards of all looks
   */
  record LookRound(Place place, List<Ask> looks, List<String> needs, List<Caution> cautions)
      implements Step {
    /** More than these nobody keeps in mind. */
    static final int MOST = 9;

    /** Letters of looks and cautions that go on a page of 24 lines of 80, with some room. */
    private static final int MOST_LETTERS = 880;

    public Ask first() {
      return looks.get(0);
    }

    /** Whether so much can be taken in at once: it stands on one page. */
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
   * A set-up to enter: its cautions, then its steps to confirm in order.
   *
   * @param purpose what it is entered for
   * @param again whether it is in force, and whoever came to the case sees to it anew
   */
  record Enter(
      SetUp setUp, List<Caution> cautions, Purpose purpose, boolean again, List<String> instead)
      implements Step {
    public Enter(SetUp setUp, List<Caution> cautions, Purpose purpose) {
      this(setUp, cautions, purpose, false, List.of());
    }

    /** The event that says that it was entered. */
    public Event done() {
      return new Event.SetUpEntered(setUp.id(), purpose.card(), instead);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.enter(this);
    }
  }

  /**
   * A set-up to leave; its steps are confirmed in order.
   *
   * @param purpose what it is left for
   */
  record Leave(SetUp setUp, Purpose purpose) implements Step {
    /** The event that says that it was left. */
    public Event done() {
      return new Event.SetUpLeft(setUp.id(), purpose.card());
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.leave(this);
    }
  }

  /**
   * @param plan the repairs in order, this one first; empty for work that a repair entails
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

  /** Two answers that cannot both be right. */
  record Settle(CaseState.Answered first, CaseState.Answered second, Contradiction contradiction)
      implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.settle(this);
    }
  }

  /**
   * Asking has stopped paying: go on, repair on suspicion, or hand over.
   *
   * @param suspects what may still be there, the likeliest first
   * @param next the check that would come next
   */
  record TakeStock(List<Suspect> suspects, Check next) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.takeStock(this);
    }
  }

  /** A proof failed: go on looking, or leave the gate out of service. */
  record DecideFailedProof(Check proof) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.decideFailedProof(this);
    }
  }

  /**
   * A danger to people: nothing else is offered until it is made safe.
   *
   * @param leaves set-ups in force when that is done; empty if this person changes none
   */
  record MakeSafe(Stop stop, List<String> now, String because, Optional<List<String>> leaves)
      implements Step {
    /** The event that says that it was done. */
    public Event done() {
      return new Event.MadeSafe(stop.id(), leaves);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.makeSafe(this);
    }
  }

  /**
   * Nothing is left to do here.
   *
   * @param ending how the case would close
   */
  record HandOver(Ending ending, HandOverReason because) implements Step {
    /** Whether the case stays open, because somebody else looks into what happened. */
    public boolean staysOpen() {
      return because instanceof HandOverReason.Stopped stopped && stopped.inquiry();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.handOver(this);
    }
  }

  /**
   * It runs as usual after something that a caller may do.
   *
   * @param watch what the caller watches for, and when to call again
   */
  record CloseSolved(List<String> watch) implements Step {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.closeSolved(this);
    }
  }

  /**
   * Every proof passed: the case can close.
   *
   * @param ending as repaired, with nothing wrong found or, of an inspection, as inspected
   * @param last what is still done to give the gate back to its users, in order
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
