package yett.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The system of units a person wants to read; what they type may be in either. */
public enum Units {
  SI,
  US;

  /** The system of that word: {@code si} or {@code us}. */
  public static Optional<Units> named(String word) {
    return Arrays.stream(values()).filter(u -> u.word().equals(word.strip())).findFirst();
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The unit in which this system shows what is usually written in another: feet for metres. */
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

  /** A sentence that was written in SI units, as this system says it. */
  public String in(String sentence) {
    return this == SI ? sentence : CustomaryWords.of(sentence);
  }

  /** Each of several sentences. */
  public List<String> in(List<String> sentences) {
    return sentences.stream().map(this::in).toList();
  }

  /**
   * The unit this system shows a quantity in. US customary differs from SI for length, force,
   * temperature, speed, acceleration, energy and mass only.
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
