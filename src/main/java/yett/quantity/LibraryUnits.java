package yett.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.GIGA;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;

import systems.uom.common.USCustomary;
// The library's catalogue of units. The import hides our own Units (the system a person prefers),
// which this file does not need.
import tech.units.indriya.unit.Units;

/**
 * Maps {@link Unit} to the units of the library. It is a class apart from {@link Unit} because the
 * library is slow to start: it is loaded at the first conversion, and its American part only for
 * American units.
 */
final class LibraryUnits {
  private LibraryUnits() {}

  static javax.measure.Unit<?> of(Unit unit) {
    return switch (unit) {
      case MILLIMETRE -> MILLI(Units.METRE);
      case CENTIMETRE -> CENTI(Units.METRE);
      case METRE -> Units.METRE;
      case INCH -> USCustomary.INCH;
      case FOOT -> USCustomary.FOOT;
      case VOLT -> Units.VOLT;
      case MILLIVOLT -> MILLI(Units.VOLT);
      case KILOVOLT -> KILO(Units.VOLT);
      case AMPERE -> Units.AMPERE;
      case MILLIAMPERE -> MILLI(Units.AMPERE);
      case OHM -> Units.OHM;
      case MILLIOHM -> MILLI(Units.OHM);
      case KILOHM -> KILO(Units.OHM);
      case MEGOHM -> MEGA(Units.OHM);
      case GIGOHM -> GIGA(Units.OHM);
      case CELSIUS -> Units.CELSIUS;
      case FAHRENHEIT -> USCustomary.FAHRENHEIT;
      case SECOND -> Units.SECOND;
      case MILLISECOND -> MILLI(Units.SECOND);
      case MINUTE -> Units.MINUTE;
      case HOUR -> Units.HOUR;
      case DAY -> Units.DAY;
      case YEAR -> Units.DAY.multiply(365.25);
      case NEWTON -> Units.NEWTON;
      case KILONEWTON -> KILO(Units.NEWTON);
      case POUND_FORCE -> standardWeight(USCustomary.POUND);
      case KILOGRAM_FORCE -> standardWeight(Units.KILOGRAM);
      case KILOGRAM -> Units.KILOGRAM;
      case GRAM -> Units.GRAM;
      case POUND -> USCustomary.POUND;
      case METRE_PER_SECOND -> Units.METRE_PER_SECOND;
      case MILLIMETRE_PER_SECOND -> MILLI(Units.METRE).divide(Units.SECOND);
      case METRE_PER_MINUTE -> Units.METRE.divide(Units.MINUTE);
      case KILOMETRE_PER_HOUR -> Units.KILOMETRE_PER_HOUR;
      case FOOT_PER_SECOND -> USCustomary.FOOT.divide(Units.SECOND);
      case FOOT_PER_MINUTE -> USCustomary.FOOT.divide(Units.MINUTE);
      case MILE_PER_HOUR -> USCustomary.MILE_PER_HOUR;
      case DEGREE -> USCustomary.DEGREE_ANGLE;
      case PERCENT -> Units.PERCENT;
      // The library's own ONE sits in a class whose annotations this build cannot see.
      case ONE -> Units.PERCENT.multiply(100);
      case WATT -> Units.WATT;
      case KILOWATT -> KILO(Units.WATT);
      case HORSEPOWER -> USCustomary.HORSEPOWER;
      case AMPERE_HOUR -> Units.AMPERE.multiply(Units.HOUR);
      case MILLIAMPERE_HOUR -> MILLI(Units.AMPERE).multiply(Units.HOUR);
      case JOULE -> Units.JOULE;
      case WATT_HOUR -> Units.WATT.multiply(Units.HOUR);
      case KILOWATT_HOUR -> KILO(Units.WATT).multiply(Units.HOUR);
      case FOOT_POUND -> standardWeight(USCustomary.POUND).multiply(USCustomary.FOOT);
      case METRE_PER_SECOND_SQUARED -> Units.METRE_PER_SQUARE_SECOND;
      case FOOT_PER_SECOND_SQUARED -> USCustomary.FOOT.divide(Units.SECOND).divide(Units.SECOND);
      case HERTZ -> Units.HERTZ;
      case KILOHERTZ -> KILO(Units.HERTZ);
      case MICROHENRY -> MICRO(Units.HENRY);
      case MILLIHENRY -> MILLI(Units.HENRY);
      case OHM_METRE -> Units.OHM.multiply(Units.METRE);
      case OHM_CENTIMETRE -> Units.OHM.multiply(CENTI(Units.METRE));
    };
  }

  /** The force that standard gravity, 9.806 65 m/s2, exerts on one unit of the mass. */
  private static javax.measure.Unit<?> standardWeight(javax.measure.Unit<?> mass) {
    return mass.multiply(Units.METRE_PER_SQUARE_SECOND).multiply(9.80665);
  }
}
