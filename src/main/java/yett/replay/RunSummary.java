package yett.replay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import yett.interview.event.Ending;
import yett.interview.evidence.EffectSigns;
import yett.interview.moment.Moment;
import yett.interview.site.SiteFacts;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.replay.Replayed.Effected;
import yett.replay.Replayed.Judged;
import yett.replay.Replayed.Look;
import yett.replay.Replayed.Mended;
import yett.replay.Replayed.Ranked;
import yett.replay.Replayed.SiteAnswer;
import yett.rules.Conclusion.Remark;
import yett.rules.Conclusion.StopNow;
import yett.wording.Wording;

/** Summarises a run and judges it by what its file says is right. */
final class RunSummary {
  private final RuleBase base;
  private final RecordedCase recorded;
  private final Transcript transcript;
  private final Moment moment;
  private final List<Ranked> ranking;
  private final List<String> stops;

  RunSummary(RuleBase base, RecordedCase recorded, Transcript transcript, Moment moment) {
    this.base = base;
    this.recorded = recorded;
    this.transcript = transcript;
    this.moment = moment;
    this.ranking = transcript.ranking(moment);
    this.stops =
        Stream.concat(
                transcript.steps().stream()
                    .filter(s -> s.kind().equals("make-safe"))
                    .map(Replayed.Taken::id),
                moment.judgement().stops().stream().map(StopNow::stop))
            .distinct()
            .toList();
  }

  Replayed replayed(String because, double expected, double spent) {
    return new Replayed(
        new Replayed.Outset(
            recorded.name(),
            recorded.file(),
            recorded.story(),
            base.fingerprint(),
            recorded.person().word(),
            site(),
            recorded.complaints(),
            recorded.history()),
        transcript.steps(),
        new Replayed.Found(ranking, effects()),
        new Replayed.Done(transcript.repairs(), stops, transcript.proofs()),
        new Replayed.End(
            moment.state().closed().map(RunSummary::word).orElse("unfinished"),
            because,
            ResultNumbers.minutes(expected),
            ResultNumbers.minutes(spent)),
        new Replayed.Noticed(
            remarks(), transcript.contradictions(), transcript.notes(), transcript.unsafe()),
        recorded.keptAside(),
        judged(),
        moment);
  }

  private List<Effected> effects() {
    return ranking.stream()
        .limit(1)
        .flatMap(r -> EffectSigns.of(base.causes().get(r.cause()), moment.trail(), base).stream())
        .map(
            s ->
                new Effected(
                    s.effect().id(),
                    ResultNumbers.chance(s.chance()),
                    looks(s.seen()),
                    looks(s.ordinary())))
        .toList();
  }

  private static List<Look> looks(List<EffectSigns.Sign> signs) {
    return signs.stream().map(s -> new Look(s.check().id(), s.outcome())).toList();
  }

  private List<String> remarks() {
    return Stream.concat(
            moment.judgement().remarks().stream().map(Remark::text).distinct(),
            moment.conflict().stream().map(c -> new Wording(base).conflict(c)))
        .toList();
  }

  static String word(Ending ending) {
    return ending.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private List<SiteAnswer> site() {
    List<SiteAnswer> site = new ArrayList<>();
    Map<String, String> given = recorded.site();
    new SiteFacts(base)
        .answers(given)
        .forEach((id, answer) -> site.add(new SiteAnswer(id, answer, !given.containsKey(id))));
    return List.copyOf(site);
  }

  private Judged judged() {
    Set<String> wanted = new HashSet<>(recorded.expect().stream().toList());
    if (wanted.isEmpty() && recorded.stop().isEmpty()) { // with a stop no cause is judged
      recorded.truth().ifPresent(wanted::addAll);
    }
    List<String> done = transcript.repairs().stream().map(Mended::repair).distinct().toList();
    return new Judged(
        among(wanted, 1),
        among(wanted, 3),
        recorded.repairs().map(done::containsAll),
        recorded.repairs().map(right -> needless(done, right)).orElse(List.of()),
        recorded.stop().map(stop -> stops.equals(List.of(stop))));
  }

  /** Whether one of the wanted causes is among the first few; empty if none is wanted. */
  private Optional<Boolean> among(Set<String> wanted, int few) {
    return wanted.isEmpty()
        ? Optional.empty()
        : Optional.of(ranking.stream().limit(few).anyMatch(r -> wanted.contains(r.cause())));
  }

  private List<String> needless(List<String> done, List<String> right) {
    Set<String> called = new HashSet<>();
    right.forEach(id -> call(id, called));
    return done.stream().filter(id -> !called.contains(id)).toList();
  }

  /** Adds a repair and all its follow-up work to a set. */
  private void call(String id, Set<String> called) {
    Repair repair = base.repairs().get(id);
    if (repair != null && called.add(id)) {
      repair.entails().forEach(next -> call(next, called));
    }
  }
}
