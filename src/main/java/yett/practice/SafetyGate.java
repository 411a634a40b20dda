package yett.practice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import yett.interview.event.Answer;
import yett.interview.moment.Moment;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.SiteCard;
import yett.plan.Planner;
import yett.rules.Conclusion;
import yett.rules.Reason;
import yett.wording.WhoMay;
import yett.wording.Wording;

/**
 * Decides what a trainee may do at present. The interview proposes only what is safe, but a trainee
 * may ask for anything. Every request is therefore checked here against the same cards.
 */
final class SafetyGate {
  /** How many of the open proofs a refusal names. */
  private static final int SAID = 3;

  /** Sources that tell a trainee nothing. */
  private static final Set<String> JUDGED =
      Set.of("considered judgement", "common practice", "from memory");

  private final RuleBase base;
  private final Planner planner;
  private final SiteFacts sites;

  SafetyGate(RuleBase base, Planner planner) {
    this.base = base;
    this.planner = planner;
    this.sites = new SiteFacts(base);
  }

  Optional<Refusal> check(Moment moment, Check check) {
    return stopped(moment)
        .or(() -> notLookedOver(moment, !check.hazards().isEmpty() || !check.needs().isEmpty()))
        .or(() -> reserved(moment, check.id(), check.who(), check.hazards()))
        .or(() -> unavailable(moment, check, check.hazards()))
        .or(() -> untried(moment, check))
        .or(() -> wrongSetUps(moment, check.needs(), check.hazards()));
  }

  Optional<Refusal> repair(Moment moment, Repair repair) {
    return stopped(moment)
        .or(() -> notLookedOver(moment, true))
        .or(() -> reserved(moment, repair.id(), repair.who(), repair.hazards()))
        .or(() -> unavailable(moment, repair, repair.hazards()))
        .or(() -> wrongSetUps(moment, repair.needs(), repair.hazards()));
  }

  Optional<Refusal> enter(Moment moment, SetUp setUp) {
    return stopped(moment)
        .or(() -> notLookedOver(moment, true))
        .or(() -> reserved(moment, setUp.id(), setUp.who(), setUp.hazards()))
        .or(() -> unsafeSetUp(moment, setUp))
        .or(() -> wrongSetUps(moment, List.of(setUp.id()), List.of(), setUp.hazards()));
  }

  Optional<Refusal> tryOut(Moment moment) {
    SetUp running = base.setUps().get(SetUp.GATE_RUNNING);
    List<String> needs =
        running != null && moment.state().role().may(running.who())
            ? List.of(running.id())
            : List.of();
    return stopped(moment)
        .or(() -> notLookedOver(moment, true))
        .or(() -> Optional.ofNullable(running).flatMap(r -> unsafeSetUp(moment, r)))
        .or(() -> wrongSetUps(moment, needs, running == null ? List.of() : running.hazards()));
  }

  /** Refuses to give the gate back unless it was tried and proved and nothing is left undone. */
  Optional<Refusal> finish(Moment moment) {
    CaseState state = moment.state();
    if (!state.work().cured()) {
      return Optional.of(
          Refusal.dangerous(
              "Nobody has seen the gate run as it should since the last repair.", List.of()));
    }
    List<String> open =
        sites.proofs(state.told().site()).stream()
            .filter(p -> !passed(state, p))
            .map(Check::ask)
            .toList();
    if (!open.isEmpty()) {
      return Optional.of(
          Refusal.dangerous(
              "The gate is not proved. Still to pass: "
                  + String.join(" ", open.subList(0, Math.min(SAID, open.size())))
                  + (open.size() > SAID ? " And " + (open.size() - SAID) + " more." : ""),
              List.of()));
    }
    return undone(moment, f -> true).or(() -> leftBehind(state));
  }

  /** Refuses because of work that a repair made necessary. */
  private Optional<Refusal> undone(Moment moment, Predicate<Conclusion.FollowUp> which) {
    return moment.judgement().followUps().stream()
        .filter(which)
        .filter(f -> !moment.judgement().unavailable().contains(f.card()))
        .findFirst()
        .map(
            f ->
                Refusal.harmless(
                    "Still to do after \""
                        + new Wording(base).origin(f)
                        + "\": "
                        + new Wording(base).card(f.card())));
  }

  private boolean isProof(String card) {
    Check check = base.checks().get(card);
    return check != null && check.kind() == Check.Kind.PROOF;
  }

  /** Refuses to give the gate back while set-ups are still in force. */
  Optional<Refusal> leftBehind(CaseState state) {
    return leftBehind(state, s -> true);
  }

  /**
   * Refuses to hand over a gate that runs or stands open. One that is locked off stays so: nobody
   * gives the power back to a gate that is not repaired.
   */
  Optional<Refusal> leftOpen(CaseState state) {
    Set<String> safe = Set.copyOf(base.withOuter(List.of(SetUp.OUT_OF_USE)));
    return leftBehind(state, s -> !safe.contains(s));
  }

  private Optional<Refusal> leftBehind(CaseState state, Predicate<String> which) {
    List<SetUp> inForce =
        state.work().setUps().stream().filter(which).map(base.setUps()::get).toList();
    return inForce.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Refusal("Work is still set up here.", false, List.of(), inForce, List.of()));
  }

  static boolean passed(CaseState state, Check proof) {
    return state
        .answer(proof.id())
        .map(CaseState.Answered::answer)
        .equals(Optional.of(new Answer.Chosen(Check.PASS)));
  }

  private static Optional<Refusal> stopped(Moment moment) {
    return moment.judgement().stops().isEmpty()
        ? Optional.empty()
        : Optional.of(
            Refusal.dangerous(
                "There is a danger to people here; nothing is done but making safe.", List.of()));
  }

  /** Refuses to touch a gate before it has been looked over for dangers. */
  private static Optional<Refusal> notLookedOver(Moment moment, boolean touches) {
    if (!(moment.step() instanceof Step.AskDangers)) {
      return Optional.empty();
    }
    String why = "First look for dangers to people, from two metres away.";
    return Optional.of(touches ? Refusal.dangerous(why, List.of()) : Refusal.harmless(why));
  }

  private Optional<Refusal> reserved(Moment moment, String card, Role who, List<String> hazards) {
    return moment.state().role().may(who)
        ? Optional.empty()
        : Optional.of(
            Refusal.dangerous(
                "This is "
                    + WhoMay.words(base, card, who, hazards)
                    + ". You work as "
                    + moment.state().role().word()
                    + ".",
                base.cautionsFor(hazards)));
  }

  /** Refuses what this gate does not have, or what the rules call unsafe after what was seen. */
  private Optional<Refusal> unavailable(Moment moment, SiteCard card, List<String> hazards) {
    return reason(moment, card.id())
        .map(
            why ->
                sites.site(moment.state().told().site()).allows(card)
                    ? Refusal.dangerous(
                        "Not as this gate is: " + why + ".", base.cautionsFor(hazards))
                    : Refusal.harmless("Not on this gate: " + why + "."));
  }

  private static Optional<String> reason(Moment moment, String card) {
    return moment.judgement().unavailabilities().stream()
        .filter(u -> u.card().equals(card))
        .findFirst()
        .map(u -> words(u.reason()));
  }

  /** The reason, with its source if that is one to look up. */
  private static String words(Reason reason) {
    return JUDGED.contains(reason.source()) ? reason.because() : reason.words();
  }

  /**
   * Refuses a set-up if the rules call everything unsafe that is done in it. The rules judge only
   * checks and repairs, because the interview never enters a set-up without a purpose.
   */
  private Optional<Refusal> unsafeSetUp(Moment moment, SetUp setUp) {
    Site site = sites.site(moment.state().told().site());
    Role role = moment.state().role();
    Stream<String> checks =
        base.ordinaryChecks()
            .filter(c -> c.needs().contains(setUp.id()))
            .filter(c -> role.may(c.who()) && site.allows(c))
            .map(Check::id);
    Stream<String> repairs =
        base.repairs().values().stream()
            .filter(r -> r.needs().contains(setUp.id()) && !setUp.id().equals(SetUp.GATE_RUNNING))
            .filter(r -> role.may(r.who()) && site.allows(r))
            .map(Repair::id);
    List<Optional<String>> reasons =
        Stream.concat(checks, repairs).map(card -> reason(moment, card)).toList();
    return reasons.isEmpty() || reasons.stream().anyMatch(Optional::isEmpty)
        ? Optional.empty()
        : Optional.of(
            Refusal.dangerous(
                "Not as this gate is: " + reasons.get(0).get() + ".",
                base.cautionsFor(setUp.hazards())));
  }

  private Optional<Refusal> untried(Moment moment, Check check) {
    if (check.kind() != Check.Kind.PROOF) {
      return Optional.empty();
    }
    return moment.state().work().cured()
        ? undone(moment, f -> !isProof(f.card()))
        : Optional.of(
            Refusal.harmless("Proofs come when the gate has been seen to run as it should: try."));
  }

  private Optional<Refusal> wrongSetUps(Moment moment, List<String> needs, List<String> hazards) {
    return wrongSetUps(moment, needs, needs, hazards);
  }

  /**
   * Refuses because the set-ups in force are not the ones needed.
   *
   * @param wanted what has to be in force together
   * @param missing those of them that have to be in force already; the others are entered now
   */
  private Optional<Refusal> wrongSetUps(
      Moment moment, List<String> wanted, List<String> missing, List<String> hazards) {
    Planner.Change change = planner.change(moment.state().work().setUps(), wanted);
    List<SetUp> leave = cards(change.leave());
    List<SetUp> enter = cards(change.enter().stream().filter(missing::contains).toList());
    if (leave.isEmpty() && enter.isEmpty()) {
      return Optional.empty();
    }
    boolean slip =
        !hazards.isEmpty() && (!enter.isEmpty() || leave.stream().anyMatch(this::canMove));
    Set<String> all = new LinkedHashSet<>(hazards);
    Stream.concat(leave.stream(), enter.stream()).forEach(s -> all.addAll(s.hazards()));
    List<String> ordered = new ArrayList<>(all);
    return Optional.of(
        new Refusal(
            slip
                ? "Not in this state of the work: it can hurt you or somebody else."
                : "Not in this state of the work.",
            slip,
            slip ? base.cautionsFor(ordered) : List.of(),
            leave,
            enter));
  }

  /** Whether the leaf can move while a set-up is in force. */
  private boolean canMove(SetUp setUp) {
    return !setUp.excludes().contains(SetUp.GATE_RUNNING);
  }

  private List<SetUp> cards(Collection<String> ids) {
    return ids.stream().map(base.setUps()::get).toList();
  }
}
