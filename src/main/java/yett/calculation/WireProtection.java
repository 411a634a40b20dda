package yett.calculation;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The largest fuse or breaker (A) that may protect a copper conductor of a standard size, so that
 * it trips before the insulation burns. Local code decides. No size smaller than this allows is
 * proposed, even if its voltage drop would be acceptable.
 *
 * <p>American sizes: NEC (NFPA 70) 240.4(D) for 18 to 10 AWG; from 8 AWG on the 60 degC column of
 * table 310.16, from memory. Metric sizes: the current that IEC 60364-5-52 gives two loaded wires
 * with PVC insulation in a conduit on a wall (method B2, 30 degC), from memory, and 6 A and 13 A
 * for 0.75 and 1 mm², which its table does not have, from memory of national ones.
 */
public final class WireProtection {
  /** Upper limit (V) of extra-low voltage; above it fixed wiring has a least size. */
  private static final double EXTRA_LOW = 50;

  private static final Map<String, Double> LARGEST =
      Map.ofEntries(
          Map.entry("18 AWG", 7.0),
          Map.entry("16 AWG", 10.0),
          Map.entry("14 AWG", 15.0),
          Map.entry("12 AWG", 20.0),
          Map.entry("10 AWG", 30.0),
          Map.entry("8 AWG", 40.0),
          Map.entry("6 AWG", 55.0),
          Map.entry("4 AWG", 70.0),
          Map.entry("3 AWG", 85.0),
          Map.entry("2 AWG", 95.0),
          Map.entry("1 AWG", 110.0),
          Map.entry("1/0 AWG", 125.0),
          Map.entry("0.75 mm2", 6.0),
          Map.entry("1 mm2", 13.0),
          Map.entry("1.5 mm2", 16.5),
          Map.entry("2.5 mm2", 23.0),
          Map.entry("4 mm2", 30.0),
          Map.entry("6 mm2", 38.0),
          Map.entry("10 mm2", 52.0),
          Map.entry("16 mm2", 69.0),
          Map.entry("25 mm2", 90.0),
          Map.entry("35 mm2", 111.0),
          Map.entry("50 mm2", 133.0));

  private WireProtection() {}

  /**
   * The largest fuse or breaker (A) for a conductor.
   *
   * @throws IllegalArgumentException if the tables do not have that size
   */
  public static double largest(Conductor wire) {
    Double largest = LARGEST.get(wire.size());
    if (largest == null) {
      throw new IllegalArgumentException("no fuse is known for " + wire.size());
    }
    return largest;
  }

  /**
   * Whether a conductor may carry a current (A), or be protected by a breaker of that size.
   *
   * @throws IllegalArgumentException if the current is negative
   */
  public static boolean carries(Conductor wire, double current) {
    return Require.notNegative("current", current) <= largest(wire);
  }

  /**
   * The first of the sizes, given from the smallest, that keeps the drop within a limit (V), may
   * carry the current, and may be laid for the voltage; empty if none does.
   *
   * @param load A, for the voltage drop
   * @param carried A, the load or the breaker that protects the conductor
   * @throws IllegalArgumentException as {@link Conductor#smallest}
   */
  public static Optional<Conductor> smallest(
      List<Conductor> sizes,
      double volts,
      double load,
      double carried,
      double oneWayLength,
      double temperature,
      double largestDrop) {
    List<Conductor> thickEnough =
        sizes.stream().filter(s -> carries(s, carried) && mayBeLaid(s, volts)).toList();
    return Conductor.smallest(thickEnough, load, oneWayLength, temperature, largestDrop);
  }

  /**
   * Whether a conductor is thick enough to be laid for a voltage (V): over 50 V fixed wiring has 14
   * AWG (NEC 310.3) or 1.5 mm² (IEC 60364-5-52, table 52.2) at least, both from memory.
   */
  public static boolean mayBeLaid(Conductor wire, double volts) {
    return volts <= EXTRA_LOW || largest(wire) >= LARGEST.get("14 AWG");
  }
}
