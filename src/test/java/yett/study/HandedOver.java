package yett.study;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.rules.Conclusion.Expectation;
import yett.rules.Interpretation;
import yett.rules.Judgement;
import yett.study.gate.SimulatedGate;

/** What the readings of the first inspection are worth when the gate fails later. */
final class HandedOver {
  static final String WITHOUT = "without";
  static final String WITH = "with";
  static final String FOR_NOTHING = "read again for nothing";

  /** Where a reading of the gate in order should help most. */
  private static final Set<String> WHERE = Set.of("drive", "chain", "battery");

  private final Expertise expertise;
  private final RuleBase base;

  HandedOver(Expertise expertise) {
    this.expertise = expertise;
    this.base = expertise.base();
  }

  /** What is measured at a commissioning, and passed, with the errors of instruments. */
  List<Event.Earlier> readings(SimulatedGate gate, Random random) {
    List<Event.Earlier> readings = new ArrayList<>();
    Judgement usual = usual(gate.site());
    for (Check check :
        base.ordinaryChecks()
            .filter(c -> c.measured() && c.inspected().at().contains(InspectionKind.COMMISSIONING))
            .filter(c -> gate.asHandedOver().containsKey(c.id()))
            .sorted(Comparator.comparing(Check::id))
            .toList()) {
      Answer answer =
          BandReading.read(
              check.measures().orElseThrow(), gate.asHandedOver().get(check.id()), random);
      double value = answer.reading().orElseThrow().value();
      if (passes(check, value, usual.expectation(check.id()))) {
        readings.add(new Event.Earlier(check.id(), value, Instant.EPOCH, true));
      }
    }
    return readings;
  }

  private static boolean passes(Check check, double value, Optional<Expectation> usual) {
    if (Interpretation.relative(check) && usual.isEmpty()) {
      return false;
    }
    List<Double> weights =
        Interpretation.ofReading(
            check,
            value,
            usual.map(Expectation::low).orElse(Double.NaN),
            usual.map(Expectation::high).orElse(Double.NaN));
    return check.indexOf(Interpretation.likeliest(check, weights)) == 0;
  }

  private Judgement usual(Map<String, String> site) {
    List<Event> events = new ArrayList<>();
    events.add(new Event.Opened("study", Role.ELECTRICIAN, base.fingerprint()));
    site.forEach((question, answer) -> events.add(new Event.SiteAnswered(question, answer)));
    List<Entry> entries = new ArrayList<>();
    events.forEach(
        e -> entries.add(new Entry(entries.size() + 1L, Instant.EPOCH, Role.ELECTRICIAN, e)));
    try (Interview interview = expertise.newInterview()) {
      return interview.judgement(entries);
    }
  }

  /** The same gates without and with them, and with all of it read again for nothing. */
  static String table(RuleBase base, Map<String, List<Played>> played) {
    Predicate<Played> there =
        p -> p.truth().stream().map(base.causes()::get).map(Cause::area).anyMatch(WHERE::contains);
    StringBuilder table =
        new StringBuilder(
            Text.head(
                List.of(
                    "faults",
                    "gates",
                    "",
                    "checks",
                    "fewer",
                    "before the first repair",
                    "fewer",
                    "of all read before",
                    "needless repairs",
                    "minutes in all: more than without",
                    "cured")));
    rows(base, "all", played, p -> true, table);
    rows(base, "drive, chain and battery", played, there, table);
    rows(base, "other", played, there.negate(), table);
    return table.toString();
  }

  private static void rows(
      RuleBase base,
      String name,
      Map<String, List<Played>> played,
      Predicate<Played> wanted,
      StringBuilder table) {
    List<Played> without = played.get(WITHOUT).stream().filter(wanted).toList();
    for (String known : List.of(WITHOUT, WITH, FOR_NOTHING)) {
      List<Played> these = played.get(known).stream().filter(wanted).toList();
      ToDoubleFunction<Played> inAll = p -> p.inAll(base.planning());
      table.append(
          Text.row(
              List.of(
                  name,
                  String.valueOf(these.size()),
                  known,
                  Text.mean(sample(these, Played::checks), 1),
                  fewer(without, these, Played::checks),
                  Text.mean(sample(these, Played::checksFirst), 1),
                  fewer(without, these, Played::checksFirst),
                  Text.mean(sample(these, Played::readBefore), 1),
                  needless(these),
                  Text.mean(sample(these, inAll).minus(sample(without, inAll)), 0),
                  cured(these))));
    }
  }

  /** The mean difference, gate by gate, as a share of the checks without. */
  private static String fewer(
      List<Played> without, List<Played> these, ToDoubleFunction<Played> what) {
    Sample before = sample(without, what);
    Sample fewer = before.minus(sample(these, what));
    double mean = Math.max(before.mean(), 1e-9);
    return Text.words("%.0f %% ± %.0f", 100 * fewer.mean() / mean, 100 * fewer.margin() / mean);
  }

  private static Sample sample(List<Played> all, ToDoubleFunction<Played> what) {
    return new Sample(all.stream().mapToDouble(what).toArray());
  }

  private static String needless(List<Played> all) {
    return Text.share(
        all.stream().mapToInt(Played::needless).sum(),
        all.stream().mapToInt(Played::repairs).sum());
  }

  private static String cured(List<Played> all) {
    return Text.share(all.stream().filter(Played::cured).count(), all.size());
  }
}
