package yett.quantity;

/** The system of units a person wants to read; what they type may be in either. */
public enum Units {
  SI,
  US;

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
