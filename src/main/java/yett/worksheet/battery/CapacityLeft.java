package yett.worksheet.battery;

import yett.calculation.BatteryCapacity;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/**
 * Capacity from a discharge test, corrected to 25 degC: C/(1 + k (T - 25)). Source: {@link
 * BatteryCapacity}.
 */
final class CapacityLeft extends Worksheet {
  CapacityLeft() {
    super(Subject.BATTERY, "battery-capacity", "capacity left, from a discharge test");
    asks(
        Battery.capacity(),
        reading("drawn", Unit.AMPERE_HOUR, "charge drawn down to the end voltage").possible(0, 600),
        reading("battery-temperature", Unit.CELSIUS, "temperature of the battery at the start")
            .usually("25 degC")
            .possible(-20, 60)
            .good(5, 40),
        choice(
                "duration",
                "how long the discharge took",
                new Choice("long", "10 to 20 h"),
                new Choice("short", "1 to 3 h"))
            .usually("long"));
    tells(
        number("capacity-at-25", Unit.AMPERE_HOUR, "capacity at 25 degC")
            .by(
                v ->
                    BatteryCapacity.at25(
                        v.of("drawn"),
                        v.of("battery-temperature"),
                        v.chose("duration", "long") ? 0.006 : 0.01)),
        number("share", Unit.PERCENT, "of the rated capacity")
            .by(v -> 100 * v.of("capacity-at-25") / v.of("capacity")),
        number("limit", Unit.AMPERE_HOUR, "replace below")
            .by(v -> BatteryCapacity.WORN * v.of("capacity")),
        text("verdict", "verdict")
            .by(
                v ->
                    v.fraction("share") < BatteryCapacity.WORN
                        ? "worn out"
                        : v.fraction("share") < BatteryCapacity.WATCH
                            ? "test every year"
                            : "good"));
    formula(
        "C25 = C/(1 + k (T - 25)), k = 0.006 for 10 to 20 h and 0.01 for 1 to 3 h; replace below 80"
            + " %, test yearly below 90 %");
    validity(
        "A fully charged block, discharged at a constant current to the end voltage of its data"
            + " sheet (about 10.5 V for 20 h), compared with the rating at that time: a short"
            + " discharge gives less by itself (battery-runtime).");
    source(
        "discharge-test practice; 80 % after IEEE 450 and 1188; 90 % from a storage-battery"
            + " maintenance note");
    lastWord(Battery.DATA_SHEET);
    notes(Battery.SHORT_CIRCUIT);
    says(
        when(
            v -> v.fraction("share") < BatteryCapacity.WORN,
            "With {share} it is worn: from here it loses capacity fast."),
        otherwise("With {share} it is still serviceable."));
    says(
        when(
            v -> v.isNear("share", 100 * BatteryCapacity.WORN),
            "The readings are too uncertain to say on which side of 80 % it is."));
  }
}
