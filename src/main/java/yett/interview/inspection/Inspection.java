package yett.interview.inspection;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.proof.Proofs;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.InspectionKind;
import yett.knowledge.Place;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.rules.Conclusion.Finding;

/** The state of an inspection: all its checks and their results. */
public final class Inspection {
  private final Moment moment;
  private final InspectionKind kind;
  private final List<Result> results;
  private final InspectionItems items;

  /**
   * One check of the inspection with its result.
   *
   * @param place where it is made
   * @param answer the last one; empty if there is none
   * @param outcome what the answer means; empty if it could not be judged
   * @param words remarks made on it
   */
  public record Result(
      Check check,
      Place place,
      Verdict verdict,
      Optional<CaseState.Answered> answer,
      Optional<String> outcome,
      List<String> words) {
    public boolean isProof() {
      return check.kind() == Check.Kind.PROOF;
    }
  }

  private Inspection(RuleBase base, Moment moment, InspectionKind kind) {
    this.moment = moment;
    this.kind = kind;
    this.items = new InspectionItems(base);
    Site site = new SiteFacts(base).site(moment.state().told().site());
    this.results = items.of(kind, site).stream().map(c -> result(c, items.place(c))).toList();
  }

  /** The inspection of a case; empty if the case is a search for a fault. */
  public static Optional<Inspection> of(RuleBase base, Moment moment) {
    return moment.state().inspection().map(kind -> new Inspection(base, moment, kind));
  }

  public InspectionKind kind() {
    return kind;
  }

  /** The place where a check is made, or the set-up in which it is made, as a heading. */
  public String where(Check check) {
    return items.where(check);
  }

  /** All results in walking order. */
  public List<Result> results() {
    return results;
  }

  /** Results with a measured value. */
  public List<Result> measured() {
    return results.stream()
        .filter(r -> r.check().measured() && r.verdict() != Verdict.OPEN)
        .toList();
  }

  public List<Result> proofs() {
    return results.stream().filter(Result::isProof).toList();
  }

  public List<Result> results(Verdict verdict) {
    return results.stream().filter(r -> r.verdict() == verdict).toList();
  }

  /** The result of one check or proof; empty if it is not part of the inspection. */
  public Optional<Result> result(String check) {
    return results.stream().filter(r -> r.check().id().equals(check)).findFirst();
  }

  /**
   * What only an electrician may measure on the standing gate, if a new gate is about to be run
   * without it for this check.
   */
  public List<Result> notBeforeRun(Check check) {
    return check.id().equals(Proofs.STOP_BUTTON) ? owedByElectrician() : List.of();
  }

  /** What only an electrician may measure on a new gate while it stands, and nobody has. */
  public List<Result> owedByElectrician() {
    return kind != InspectionKind.COMMISSIONING
        ? List.of()
        : results(Verdict.OPEN).stream()
            .filter(r -> r.check().who() == Role.ELECTRICIAN)
            .filter(r -> !r.check().needs().contains(SetUp.GATE_RUNNING))
            .filter(r -> !r.check().needs().contains(SetUp.ABLE_TO_RUN))
            .toList();
  }

  private Result result(Check check, Place place) {
    Optional<CaseState.Answered> answer = moment.state().latest(check.id());
    Optional<String> outcome = answer.flatMap(a -> outcome(check, a));
    List<String> words = remarks(check.id()).toList();
    Verdict verdict = verdict(check, answer, outcome);
    return new Result(
        check,
        place,
        verdict == Verdict.PASS && !words.isEmpty() ? Verdict.REMARK : verdict,
        answer,
        outcome,
        words);
  }

  private Stream<String> remarks(String check) {
    return moment.state().notes().stream()
        .map(e -> (Event.Noted) e.event())
        .filter(n -> n.about().equals(Optional.of(check)) && !n.text().isEmpty())
        .map(Event.Noted::text);
  }

  private static Verdict verdict(
      Check check, Optional<CaseState.Answered> answer, Optional<String> outcome) {
    if (answer.filter(a -> a.answer().tells()).isEmpty()) {
      return Verdict.OPEN;
    }
    Answer given = answer.get().answer();
    if (given.choices().size() > 1) {
      return verdict(check, given);
    }
    return outcome.map(o -> verdict(check, check.indexOf(o))).orElse(Verdict.REMARK);
  }

  /** The verdict for outcomes in words: it fails if one of them does, whatever else was seen. */
  static Verdict verdict(Check check, Answer answer) {
    List<Verdict> all =
        answer.choices().stream()
            .map(check::indexOf)
            .filter(at -> at >= 0)
            .map(at -> verdict(check, at))
            .toList();
    return Stream.of(Verdict.FAIL, Verdict.REMARK)
        .filter(all::contains)
        .findFirst()
        .orElse(all.isEmpty() ? Verdict.REMARK : Verdict.PASS);
  }

  private Optional<String> outcome(Check check, CaseState.Answered answer) {
    Optional<String> chosen = answer.answer().choice().filter(o -> check.indexOf(o) >= 0);
    return chosen.or(() -> moment.judgement().finding(answer.event()).map(Finding::outcome));
  }

  /**
   * The verdict for an outcome of a check.
   *
   * @param outcome its position
   */
  public static Verdict verdict(Check check, int outcome) {
    if (outcome == 0) {
      return Verdict.PASS;
    }
    return check.inspected().remarks().contains(check.outcomes().get(outcome).id())
        ? Verdict.REMARK
        : Verdict.FAIL;
  }

  /** The progress, in words. */
  public String progress() {
    long made = results.size() - results(Verdict.OPEN).size();
    return made + " of " + results.size();
  }

  /** The summary of the findings, in words. */
  public String sum() {
    return Stream.of(Verdict.FAIL, Verdict.REMARK, Verdict.OPEN)
        .filter(v -> !results(v).isEmpty())
        .map(v -> results(v).size() + " " + v.words())
        .collect(
            Collectors.collectingAndThen(
                Collectors.joining(", "), s -> s.isEmpty() ? "everything passed" : s));
  }
}
