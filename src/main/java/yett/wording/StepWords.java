package yett.wording;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.step.HandOverReason;
import yett.interview.step.Occasion;
import yett.interview.step.Purpose;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.Stop;

/** Says why a step comes now, in sentences without a capital and a full stop. */
public final class StepWords {
  private final Wording words;

  public StepWords(RuleBase base) {
    this.words = new Wording(base);
  }

  /** Why a check or repair comes up, if for another reason than its worth; empty otherwise. */
  public static String occasion(Occasion occasion) {
    return switch (occasion.kind()) {
      case WORTH -> "";
      case ASKED_FOR -> "you asked for it";
      case AFTER_REPAIR -> "after \"" + occasion.after().orElseThrow().name() + "\"";
      case BEFORE_RUN -> "this comes before the gate is run, because of what happened to it";
      case INSPECTION -> "";
      case PROOF -> "proof before the gate returns to service";
      case LAST_TRY -> "nothing is left to ask, and it costs nothing to try";
      case FAILED_PROOF -> "the failed proof points to it";
      case BEHIND -> "the gate runs; this looks for an underlying cause";
      case LASTING -> "the gate runs; this is to keep the fault from coming back";
    };
  }

  /** What a set-up is for. */
  public String purpose(Purpose purpose) {
    return switch (purpose.kind()) {
      case CHECK -> words.ask(purpose.card());
      case REPAIR -> words.repair(purpose.card());
      case TRIAL -> "trying the gate";
      case CLOSING -> "the end of the visit";
      case OPEN -> "the next step";
    };
  }

  public static String because(HandOverReason reason) {
    return reason.accept(HandingOver.INSTANCE);
  }

  /**
   * Says that nothing open to this role is worth its cost. For the next person it is said of a
   * caller in the same way as of anybody else.
   */
  public static String nothingLeft(Role role) {
    return nothingLeft(role, false);
  }

  /**
   * The same.
   *
   * @param refused whether something that was worth its cost could not be done here
   */
  public static String nothingLeft(Role role, boolean refused) {
    return (refused ? "no other" : "no")
        + " check or repair that is open to "
        + Wording.aPerson(role)
        + " is worth its cost now";
  }

  private enum HandingOver implements HandOverReason.Visitor<String> {
    INSTANCE;

    @Override
    public String wanted(HandOverReason.Wanted reason) {
      return reason.why();
    }

    @Override
    public String barred(HandOverReason.Barred reason) {
      return "the gate is in the set-up \""
          + reason.setUp().name()
          + "\", which only "
          + Wording.aPerson(reason.setUp().who())
          + " may change";
    }

    @Override
    public String stopped(HandOverReason.Stopped reason) {
      return reason.stops().stream()
          .map(s -> s.name() + goesOn(s))
          .distinct()
          .collect(Collectors.joining("; "));
    }

    private static String goesOn(Stop stop) {
      return stop.goesOn()
          .map(who -> ", and only " + Wording.aPerson(who) + " may go on")
          .orElse("");
    }

    @Override
    public String nothingLeft(HandOverReason.NothingLeft reason) {
      return reason.role() == Role.CALLER
          ? "nothing more that the caller may do or look at is worth its time"
          : Stream.of(
                  Stream.of(rest(reason)),
                  reason.refused().stream().map(HandingOver::refused),
                  reason.alone().stream()
                      .map(r -> "\"" + r.name() + "\" by itself does not make it run"),
                  reason.reserved().stream().map(WhoMay::words))
              .flatMap(parts -> parts)
              .collect(Collectors.joining("; "));
    }

    /** That nothing is left, or nothing else than what could not be done or a danger forbids. */
    private static String rest(HandOverReason.NothingLeft reason) {
      String nothing = StepWords.nothingLeft(reason.role(), !reason.refused().isEmpty());
      if (!reason.standing().isEmpty()) {
        return "while the danger stands ("
            + reason.standing().stream().map(Stop::name).collect(Collectors.joining("; "))
            + "), "
            + nothing;
      }
      return nothing;
    }

    private static String refused(HandOverReason.Refused refused) {
      return "\""
          + refused.repair().name()
          + "\" could not be done here"
          + (refused.why().isEmpty() ? "" : ": " + refused.why());
    }

    @Override
    public String untold(HandOverReason.Untold reason) {
      return "the caller could not answer the last questions; somebody at the gate will see more";
    }

    @Override
    public String unproved(HandOverReason.Unproved reason) {
      return "proofs still to pass: "
          + reason.proofs().stream().map(Check::ask).collect(Collectors.joining(" "));
    }

    @Override
    public String unset(HandOverReason.Unset reason) {
      return "still to set, before anybody uses the gate: "
          + reason.settings().stream().map(Repair::name).collect(Collectors.joining("; "));
    }
  }
}
