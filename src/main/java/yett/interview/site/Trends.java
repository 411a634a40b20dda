package yett.interview.site;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import yett.calculation.PairOfBatteries;
import yett.calculation.Trend;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.Event.Earlier;
import yett.interview.moment.Moment;
import yett.interview.state.CaseState;
import yett.knowledge.Check;
import yett.knowledge.Instruments;
import yett.knowledge.Measures;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/**
 * The trends of a gate's readings since its baseline, from the readings of earlier visits that the
 * case holds and those of this case before any repair. Where physics gives a reading's dependence
 * on temperature, and the temperature is known on both days, earlier readings are corrected to
 * today's.
 */
public final class Trends {
  private static final String DIP = "battery-running-voltage";
  private static final double YEAR = Duration.ofDays(365).plusHours(6).toSeconds();

  private final RuleBase base;
  private final List<Earlier> earlier;
  private final OptionalDouble today;
  private final CaseState state;
  private final List<Entry> entries;

  /** The trends at a gate whose case has these events. */
  public Trends(RuleBase base, CaseState state, List<Entry> entries) {
    this.base = base;
    this.state = state;
    this.entries = entries;
    this.earlier = state.opened().map(Event.Opened::earlier).orElse(List.of());
    this.today = temperature(base, state);
  }

  /** From these events; the first one holds the earlier readings. */
  public static Trends of(RuleBase base, List<Entry> entries) {
    return new Trends(base, CaseState.of(entries), entries);
  }

  public static Trends of(RuleBase base, Moment moment) {
    return new Trends(base, moment.state(), moment.entries());
  }

  /** Temperature at the gate as it was told, degC; empty if it was not. */
  public static OptionalDouble temperature(RuleBase base, CaseState state) {
    SiteQuestion question = base.siteQuestions().get(SiteQuestion.TEMPERATURE_TODAY);
    String told = state.told().site().get(SiteQuestion.TEMPERATURE_TODAY);
    return question == null || !SiteFacts.canBe(question, told)
        ? OptionalDouble.empty()
        : question
            .measures()
            .map(m -> OptionalDouble.of(m.parse(told)))
            .orElse(OptionalDouble.empty());
  }

  /** An earlier reading corrected to today's temperature, where physics gives the dependence. */
  public double asToday(Earlier reading) {
    return reading.check().equals(DIP) && today.isPresent() && reading.temperature().isPresent()
        ? PairOfBatteries.runningAt(
            reading.value(), reading.temperature().get(), today.getAsDouble())
        : reading.value();
  }

  /** The trend of a check; empty if there is no baseline or too few readings since. */
  public Optional<Trend> of(Check check) {
    return check
        .measures()
        .flatMap(
            m ->
                baseline(check)
                    .flatMap(
                        b -> Trend.of(points(check, b), Instruments.uncertainty(m, b.value()))));
  }

  public Optional<Earlier> baseline(Check check) {
    return state.opened().flatMap(o -> o.baseline(check.id()));
  }

  /** The readings from the baseline on, oldest first, with years since then. */
  public List<Trend.Point> points(Check check) {
    return baseline(check).map(b -> points(check, b)).orElse(List.of());
  }

  private List<Trend.Point> points(Check check, Earlier baseline) {
    List<Trend.Point> points = new ArrayList<>();
    points.add(new Trend.Point(0, asToday(baseline)));
    earlier.stream()
        .filter(e -> !e.baseline() && e.check().equals(check.id()))
        .filter(e -> e.at().isAfter(baseline.at()))
        .sorted(Comparator.comparing(Earlier::at))
        .forEach(e -> points.add(new Trend.Point(years(baseline, e.at()), asToday(e))));
    state
        .latest(check.id())
        .filter(a -> a.epoch() == 0)
        .flatMap(
            a ->
                a.answer()
                    .reading()
                    .flatMap(
                        r ->
                            a.taken()
                                .or(() -> at(a.event()))
                                .map(when -> new Trend.Point(years(baseline, when), r.value()))))
        .ifPresent(points::add);
    return List.copyOf(points);
  }

  private Optional<Instant> at(long event) {
    return entries.stream().filter(e -> e.number() == event).map(Entry::at).findFirst();
  }

  private static double years(Earlier baseline, Instant at) {
    return Duration.between(baseline.at(), at).toSeconds() / YEAR;
  }

  /** The trend in words: the change a year and its uncertainty. */
  public String words(Check check, Trend trend) {
    Measures measures = check.measures().orElseThrow();
    String since =
        LocalDate.ofInstant(baseline(check).orElseThrow().at(), ZoneOffset.UTC).toString();
    String between = " (" + few(measures, least(trend)) + " to " + few(measures, most(trend)) + ")";
    String how = trend.rises() ? "rises by " : trend.falls() ? "falls by " : "";
    return how.isEmpty()
        ? "no sure trend in " + trend.readings() + " readings since " + since
        : how
            + few(measures, Math.abs(trend.slope()))
            + " a year"
            + between
            + ", "
            + trend.readings()
            + " readings since "
            + since;
  }

  private static double least(Trend trend) {
    return Math.min(Math.abs(trend.low()), Math.abs(trend.high()));
  }

  private static double most(Trend trend) {
    return Math.max(Math.abs(trend.low()), Math.abs(trend.high()));
  }

  /** A slope with two significant figures, which its uncertainty justifies. */
  private static String few(Measures measures, double value) {
    return measures.showChange(value, 2);
  }
}
