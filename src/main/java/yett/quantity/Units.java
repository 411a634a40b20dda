package yett.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The system of units in which a person reads values. What they type may be in either. */
public enum Units {
  SI,
  US;

  /** The system with this name: {@code si} or {@code us}. */
  public static Optional<Units> named(String word) {
    return Arrays.stream(values()).filter(u -> u.word().equals(word.strip())).findFirst();
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The unit of this system that replaces a unit written in a card: feet for metres. */
  public Unit of(Unit written) {
    if (this == SI) {
      return switch (written) {
        case FOOT -> Unit.METRE;
        case INCH,
            POUND_FORCE,
            POUND,
            FAHRENHEIT,
            FOOT_PER_SECOND,
            FOOT_PER_MINUTE,
            MILE_PER_HOUR,
            FOOT_PER_SECOND_SQUARED,
            FOOT_POUND,
            HORSEPOWER ->
            written.quantity().canonical();
        default -> written;
      };
    }
    Unit preferred = preferred(written.quantity());
    return switch (written) {
      case METRE, FOOT -> Unit.FOOT;
      case WATT_HOUR, KILOWATT_HOUR -> written;
      default -> preferred == written.quantity().canonical() ? written : preferred;
    };
  }

  /** The sentence, written in SI units, with its quantities in this system's units. */
  public String in(String sentence) {
    return this == SI ? sentence : CustomaryWords.of(sentence);
  }

  /** Converts each sentence as {@link #in(String)} does. */
  public List<String> in(List<String> sentences) {
    return sentences.stream().map(this::in).toList();
  }

  /**
   * The unit in which this system shows a quantity. US customary differs from SI only for length,
   * force, temperature, speed, acceleration, energy and mass.
   */
  public Unit preferred(Quantity quantity) {
    if (this == SI) {
      return quantity.canonical();
    }
    return switch (quantity) {
      case LENGTH -> Unit.INCH;
      case FORCE -> Unit.POUND_FORCE;
      case TEMPERATURE -> Unit.FAHRENHEIT;
      case SPEED -> Unit.FOOT_PER_SECOND;
      case MASS -> Unit.POUND;
      case ACCELERATION -> Unit.FOOT_PER_SECOND_SQUARED;
      case ENERGY -> Unit.FOOT_POUND;
      default -> quantity.canonical();
    };
  }
}
