package yett.calculation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A copper conductor of a standard size.
 *
 * <p>American sizes: NEC (NFPA 70) chapter 9, table 8, uncoated copper, direct current, at 75 degC;
 * stranded values include the lay. Note that some reprints print the solid column as stranded.
 * Metric sizes: IEC 60228, plain copper, <em>maximum</em> at 20 degC; a lower reading is normal.
 *
 * @param size such as {@code 12 AWG} or {@code 2.5 mm2}
 * @param resistance ohm/m at the reference temperature
 * @param referenceTemperature degC
 */
public record Conductor(String size, double resistance, double referenceTemperature) {
  /** Table 8, stranded, from the smallest. */
  public static final List<Conductor> AWG_STRANDED =
      awg(
          List.of("18", "16", "14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0"),
          7.95,
          4.99,
          3.14,
          1.98,
          1.24,
          0.778,
          0.491,
          0.308,
          0.245,
          0.194,
          0.154,
          0.122);

  /** Table 8, solid, from the smallest. */
  public static final List<Conductor> AWG_SOLID =
      awg(List.of("18", "16", "14", "12", "10", "8"), 7.77, 4.89, 3.07, 1.93, 1.21, 0.764);

  /** IEC 60228 class 2 (stranded), from the smallest. */
  public static final List<Conductor> IEC_CLASS_2 =
      iec(24.5, 18.1, 12.1, 7.41, 4.61, 3.08, 1.83, 1.15, 0.727, 0.524, 0.387);

  /**
   * IEC 60228 class 1 (solid), from the smallest; plain copper has the maxima of class 2, from
   * memory.
   */
  public static final List<Conductor> IEC_CLASS_1 = IEC_CLASS_2.subList(0, 8);

  /** IEC 60228 class 5 (flexible), from the smallest. */
  public static final List<Conductor> IEC_CLASS_5 =
      iec(26.0, 19.5, 13.3, 7.98, 4.95, 3.30, 1.91, 1.21, 0.780, 0.554, 0.386);

  /** Share of the nominal voltage below which a drop cannot be distinguished from none. */
  private static final double LEAST_DROP = 0.01;

  /** Share of the nominal voltage that a branch is advised to lose at most: NFPA 70 210.19(A). */
  public static final double ADVISED_DROP = 0.03;

  /** Share that is advised from the service to the load: NFPA 70 215.2(A). */
  public static final double ADVISED_DROP_IN_ALL = 0.05;

  /** Copper, 1/K, at 75 degC: note to NEC chapter 9, table 8. */
  private static final double COEFFICIENT_AT_75 = 0.00323;

  /** Annealed copper, 1/K, at 20 degC: the international annealed copper standard, IEC 60028. */
  private static final double COEFFICIENT_AT_20 = 0.00393;

  public Conductor {
    Require.positive("resistance", resistance);
    if (referenceTemperature != 75 && referenceTemperature != 20) {
      throw new IllegalArgumentException(
          "reference temperature must be 20 or 75, not " + referenceTemperature);
    }
  }

  private static List<Conductor> awg(List<String> gauges, double... ohmPerThousandFeet) {
    List<Conductor> sizes = new ArrayList<>();
    for (int i = 0; i < gauges.size(); i++) {
      sizes.add(new Conductor(gauges.get(i) + " AWG", ohmPerThousandFeet[i] / 304.8, 75));
    }
    return List.copyOf(sizes);
  }

  private static List<Conductor> iec(double... ohmPerKilometre) {
    List<String> areas = List.of("0.75", "1", "1.5", "2.5", "4", "6", "10", "16", "25", "35", "50");
    List<Conductor> sizes = new ArrayList<>();
    for (int i = 0; i < areas.size(); i++) {
      sizes.add(new Conductor(areas.get(i) + " mm2", ohmPerKilometre[i] / 1000, 20));
    }
    return List.copyOf(sizes);
  }

  /**
   * Resistance (ohm/m) at a temperature (degC): R (1 + α (T - Tref)). Valid from -40 to 100 degC.
   *
   * @throws IllegalArgumentException outside that
   */
  public double at(double temperature) {
    Require.between("temperature", temperature, -40, 100);
    double coefficient = referenceTemperature == 75 ? COEFFICIENT_AT_75 : COEFFICIENT_AT_20;
    return resistance * (1 + coefficient * (temperature - referenceTemperature));
  }

  /**
   * Resistance (ohm) there and back: 2 L R.
   *
   * @param oneWayLength m
   * @param temperature of the conductor, degC
   * @throws IllegalArgumentException if the length is negative
   */
  public double loop(double oneWayLength, double temperature) {
    return 2 * Require.notNegative("one-way length", oneWayLength) * at(temperature);
  }

  /**
   * Voltage lost (V) on the way there and back: 2 I L R. For direct current, and for 50 or 60 Hz up
   * to about 4 AWG, where reactance is small.
   *
   * @param current A
   * @param oneWayLength m
   * @param temperature of the conductor, degC
   * @throws IllegalArgumentException if current or length is negative
   */
  public double drop(double current, double oneWayLength, double temperature) {
    Require.notNegative("current", current);
    Require.notNegative("one-way length", oneWayLength);
    return 2 * current * oneWayLength * at(temperature);
  }

  /**
   * The usual range of the voltage drop (V) for a feeder whose calculated drop is given: its high
   * end is the calculated drop, but at least 1 % of the nominal voltage and at most the advised
   * share.
   */
  public static Range usualDrop(double drop, double nominal) {
    double most = Math.min(Math.max(drop, LEAST_DROP * nominal), ADVISED_DROP * nominal);
    return new Range(0, most);
  }

  /**
   * The longest run (m, one way) that loses no more than a limit (V).
   *
   * @throws IllegalArgumentException if current or limit is not positive
   */
  public double longestRun(double current, double temperature, double largestDrop) {
    Require.positive("current", current);
    Require.positive("largest drop", largestDrop);
    return largestDrop / (2 * current * at(temperature));
  }

  /**
   * The first of the sizes, given from the smallest, that keeps the drop within a limit (V); empty
   * if none does. It does not check the current that the wire may carry: see {@link
   * WireProtection#smallest}.
   *
   * @throws IllegalArgumentException if the limit is not positive
   */
  public static Optional<Conductor> smallest(
      List<Conductor> sizes,
      double current,
      double oneWayLength,
      double temperature,
      double largestDrop) {
    Require.positive("largest drop", largestDrop);
    return sizes.stream()
        .filter(size -> size.drop(current, oneWayLength, temperature) <= largestDrop)
        .findFirst();
  }
}
