package yett.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import yett.bench.Anomaly.Found;
import yett.bench.Anomaly.Kind;
import yett.knowledge.RuleBase;
import yett.rules.DecisionTables;

/** Finds the weak places of a rule base, by kind. */
public final class Anomalies {
  private Anomalies() {}

  /** The weak places that follow from its cards and from the text of its rules. */
  public static List<Anomaly> proved(RuleBase base) {
    List<Anomaly> all = new ArrayList<>(CardAnomalies.of(base));
    all.addAll(RuleAnomalies.of(base));
    DecisionTables.problems(base).stream()
        .filter(p -> p.kind().equals(DecisionTables.CLASH))
        .map(p -> new Anomaly(Kind.CONTRADICTORY, Found.PROVED, p.file(), p.message()))
        .forEach(all::add);
    all.sort(Comparator.comparing(Anomaly::kind).thenComparing(Anomaly::about));
    return all;
  }
}
