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
import yett.interview.Answer;
import yett.interview.Entry;
import yett.interview.Event;
import yett.interview.Expertise;
import yett.interview.Interview;
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

  /** The same gates without and with them. */
  static String table(RuleBase base, Map<String, List<Played>> played) {
    List<Played> without = played.get(WITHOUT);
    List<Played> with = played.get(WITH);
    Predicate<Played> there =
        p -> p.truth().stream().map(base.causes()::get).map(Cause::area).anyMatch(WHERE::contains);
    StringBuilder table =
        new StringBuilder(
            Text.head(
                List.of(
                    "faults",
                    "gates",
                    "checks without",
                    "checks with",
                    "fewer checks",
                    "of them read before",
                    "needless repairs without",
                    "with",
                    "minutes in all: with less without",
                    "cured without",
                    "with")));
    table.append(row(base, "all", without, with, p -> true));
    table.append(row(base, "drive, chain and battery", without, with, there));
    table.append(row(base, "other", without, with, there.negate()));
    return table.toString();
  }

  private static String row(
      RuleBase base,
      String name,
      List<Played> without,
      List<Played> with,
      Predicate<Played> wanted) {
    List<Played> before = new ArrayList<>();
    List<Played> after = new ArrayList<>();
    for (int i = 0; i < without.size(); i++) {
      if (wanted.test(without.get(i))) {
        before.add(without.get(i));
        after.add(with.get(i));
      }
    }
    Sample checks = sample(before, Played::checks);
    Sample fewer = checks.minus(sample(after, Played::checks));
    double mean = Math.max(checks.mean(), 1e-9);
    return Text.row(
        List.of(
            name,
            String.valueOf(before.size()),
            Text.mean(checks, 1),
            Text.mean(sample(after, Played::checks), 1),
            Text.words("%.0f %% ± %.0f", 100 * fewer.mean() / mean, 100 * fewer.margin() / mean),
            Text.mean(sample(after, Played::readBefore), 1),
            needless(before),
            needless(after),
            Text.mean(
                sample(after, p -> p.inAll(base.planning()))
                    .minus(sample(before, p -> p.inAll(base.planning()))),
                0),
            cured(before),
            cured(after)));
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
