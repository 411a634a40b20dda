package yett.dispatch;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;

/**
 * Estimates the minutes at the gate for looking, repairing, trying and proving, including the
 * set-ups.
 *
 * @param first checks that will probably be made first
 * @param proofs those that the site needs
 */
record VisitTime(RuleBase base, List<Check> first, List<Check> proofs) {
  private static final double RETEST = 2;

  DispatchSheet.Minutes of(List<Scenario> scenarios) {
    Map<Scenario, Double> minutes = new HashMap<>();
    scenarios.forEach(s -> minutes.put(s, minutes(s)));
    List<Scenario> rising = new ArrayList<>(scenarios);
    rising.sort(Comparator.comparingDouble(minutes::get));
    return new DispatchSheet.Minutes(at(rising, minutes, 0.5), at(rising, minutes, 0.9));
  }

  private static int at(List<Scenario> rising, Map<Scenario, Double> minutes, double share) {
    double sum = 0;
    double last = 0;
    for (Scenario scenario : rising) {
      sum += scenario.chance();
      last = minutes.get(scenario);
      if (sum >= share) {
        break;
      }
    }
    return (int) (5 * Math.round(last / 5)); // to five minutes
  }

  private double minutes(Scenario scenario) {
    Set<String> setUps = new HashSet<>();
    double sum = 0;
    for (Check check : first) {
      sum += check.minutes() + base.planning().question();
      setUps.addAll(check.needs());
    }
    for (Repair repair : scenario.repairs()) {
      sum += repair.minutes() + RETEST;
      setUps.addAll(repair.needs());
      sum += repair.entails().stream().mapToDouble(this::entailed).sum();
    }
    for (Check proof : proofs) {
      sum += proof.minutes();
      setUps.addAll(proof.needs());
    }
    for (String id : setUps) {
      SetUp setUp = base.setUps().get(id);
      sum += setUp.enterMinutes() + setUp.leaveMinutes();
    }
    return sum;
  }

  private double entailed(String id) {
    return base.repairs().containsKey(id)
        ? base.repairs().get(id).minutes()
        : base.checks().get(id).minutes();
  }
}
