package yett.calculation;

import java.util.Arrays;
import java.util.Optional;

/**
 * The roller chains found on gates. Pitch (m) and minimum ultimate tensile strength (N) of the
 * American sizes are those of ASME B29.1; mass per length (kg/m) is a catalogue's, typical, as the
 * standard gives none. Never compare a minimum with a catalogue's average strength, which is 18 to
 * 33 % higher.
 *
 * <p>08B and 10B follow ISO 606; their strengths (17.8 and 22.2 kN) are from memory.
 *
 * <p>No. 40, No. 41 and 08B share a pitch but neither width nor roller, and No. 41 is far weaker:
 * pitch alone does not prove that chain and sprocket match.
 */
public enum RollerChain {
  NO_35("35", inches(0.375), poundsForce(1760), poundsPerFoot(0.21)),
  NO_41("41", inches(0.5), poundsForce(1500), poundsPerFoot(0.28)),
  NO_40("40", inches(0.5), poundsForce(3125), poundsPerFoot(0.41)),
  NO_50("50", inches(0.625), poundsForce(4880), poundsPerFoot(0.68)),
  NO_60("60", inches(0.75), poundsForce(7030), poundsPerFoot(1.00)),
  ISO_08B("08B", 0.0127, 17_800, 0.70),
  ISO_10B("10B", 0.015875, 22_200, 0.91);

  private final String number;
  private final double pitch;
  private final double minimumUltimateStrength;
  private final double massPerLength;

  RollerChain(String number, double pitch, double minimumUltimateStrength, double massPerLength) {
    this.number = number;
    this.pitch = pitch;
    this.minimumUltimateStrength = minimumUltimateStrength;
    this.massPerLength = massPerLength;
  }

  /** The chain of that number, such as {@code 40} or {@code 08B}. */
  public static Optional<RollerChain> numbered(String number) {
    return Arrays.stream(values())
        .filter(chain -> chain.number.equalsIgnoreCase(number))
        .findFirst();
  }

  public String number() {
    return number;
  }

  /** m. */
  public double pitch() {
    return pitch;
  }

  /** Minimum ultimate strength (N) of every chain of this number. It is not the working load. */
  public double minimumUltimateStrength() {
    return minimumUltimateStrength;
  }

  /** kg/m. */
  public double massPerLength() {
    return massPerLength;
  }

  /** N/m. */
  public double weightPerLength() {
    return massPerLength * Gravity.STANDARD;
  }

  // Exact factors of NIST SP 811, B.8.
  private static double inches(double inches) {
    return inches * 0.0254;
  }

  private static double poundsForce(double pounds) {
    return pounds * 4.4482216152605;
  }

  private static double poundsPerFoot(double pounds) {
    return pounds * 0.45359237 / 0.3048;
  }
}
