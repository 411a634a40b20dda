package yett.study.gate;

import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * What instruments would have shown, without their own error, on the day the gate was handed over:
 * the same machine some years younger, in another season. How it ages between then and now is this
 * study's own judgement: batteries lose 5.5 % of their capacity a year, the chain grows by 0.25 % a
 * year and has bedded in by up to 15 % of its sag, grease and track make 7 % of difference.
 */
final class Commissioning {
  private static final double CAPACITY_A_YEAR = 0.055;
  private static final double GROWTH_A_YEAR = 0.25;
  private static final double SEASON = 0.07;

  private Commissioning() {}

  /** By check, of a gate that is still sound. */
  static Map<String, Double> readings(Gate now, Random random) {
    Gate then = younger(now, Fault.between(random, 0.5, 3), random);
    Map<String, Double> readings = new TreeMap<>();
    new TreeMap<>(Readings.ALL)
        .forEach(
            (check, reading) -> {
              double value = reading.of(then, random);
              if (!Double.isNaN(value)) {
                readings.put(check, value);
              }
            });
    return readings;
  }

  private static Gate younger(Gate now, double years, Random random) {
    Gate then = new Gate(now.opening, now.mass, Math.round(Fault.between(random, -4, 30)));
    then.batteries.health = Math.min(1, now.batteries.health + CAPACITY_A_YEAR * years);
    then.batteries.jointResistance = now.batteries.jointResistance;
    then.supply.service = now.supply.service + 2 * random.nextGaussian();
    then.supply.feederResistance = now.supply.feederResistance;
    then.noLoad = now.noLoad * (1 + SEASON * random.nextGaussian());
    then.winding = now.winding;
    then.rolling = now.rolling * (1 + SEASON * random.nextGaussian());
    then.chain.hang(now.chain.sag() * Fault.between(random, 0.85, 1));
    then.chain.wear = Math.max(0, now.chain.wear - GROWTH_A_YEAR * years);
    then.chain.offset = now.chain.offset;
    then.threshold = now.thresholdNoted;
    then.thresholdNoted = now.thresholdNoted;
    then.markerGap = now.markerGap;
    then.beamMargin = now.beamMargin;
    then.edgeOhms = now.edgeOhms;
    return then;
  }
}
