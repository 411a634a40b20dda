package yett.rules;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import yett.calculation.AccessoryLoad;
import yett.calculation.Conductor;
import yett.calculation.LeadAcid;
import yett.calculation.Leaf;
import yett.calculation.MainsLoad;
import yett.calculation.Range;
import yett.calculation.RollerChain;
import yett.calculation.ServiceVoltage;

/** Converts answers to site questions into values for the formulas; called from the rules. */
public final class SiteValues {
  /** Voltage (V) of the motor and of the pair of batteries. */
  public static final double MOTOR_VOLTS = MainsLoad.MOTOR_VOLTS;

  /** Devices by site question and choice. */
  private static final Map<String, List<AccessoryLoad>> FITTED =
      Map.of(
          "radio fitted", List.of(AccessoryLoad.RADIO),
          "keypad fitted", List.of(AccessoryLoad.KEYPAD),
          "telephone-entry fitted", List.of(AccessoryLoad.TELEPHONE_ENTRY),
          "timer fitted", List.of(AccessoryLoad.TIMER),
          "beams one", List.of(AccessoryLoad.BEAM),
          "beams two", List.of(AccessoryLoad.BEAM, AccessoryLoad.BEAM),
          "loops fitted", List.of(AccessoryLoad.LOOPS),
          "exit-sensor fitted", List.of(AccessoryLoad.EXIT_SENSOR),
          "wireless-edge wireless", List.of(AccessoryLoad.EDGE_RECEIVER));

  private SiteValues() {}

  /**
   * The conductor that a choice such as {@code awg-12} or {@code mm2-2-5} stands for, stranded;
   * empty for a choice that names no size in the tables.
   */
  public static Optional<Conductor> conductor(String choice) {
    String size =
        choice.startsWith("awg-")
            ? choice.substring(4) + " AWG"
            : choice.replaceFirst("^mm2-", "").replace('-', '.') + " mm2";
    return Stream.of(Conductor.AWG_STRANDED, Conductor.IEC_CLASS_2)
        .flatMap(List::stream)
        .filter(c -> c.size().equals(size))
        .findFirst();
  }

  /** Current (A at 24 V) that the devices named by answers to site questions draw together. */
  public static double accessories(Collection<?> answers) {
    double sum =
        answers.stream()
            .map(Fact.Site.class::cast)
            .map(answer -> FITTED.get(answer.question() + " " + answer.choice()))
            .filter(Objects::nonNull)
            .flatMap(List::stream)
            .mapToDouble(AccessoryLoad::atRest)
            .sum();
    return Math.round(1000 * sum) / 1000.0; // so that the order of devices makes no difference
  }

  /** All sizes of the series that a choice belongs to, from the smallest. */
  public static List<Conductor> sizesLike(String choice) {
    return choice.startsWith("awg-") ? Conductor.AWG_STRANDED : Conductor.IEC_CLASS_2;
  }

  /** The chain that a choice stands for; empty for a choice that names none in the tables. */
  public static Optional<RollerChain> chain(String choice) {
    return RollerChain.numbered(choice);
  }

  /** The build of the batteries for a choice. */
  public static LeadAcid.Build build(String batteries) {
    return batteries.equals("flooded") ? LeadAcid.Build.FLOODED : LeadAcid.Build.AGM;
  }

  /**
   * Usual rolling resistance c of a leaf on the support that a choice stands for; that of a track
   * for any other.
   */
  public static Range rollingResistance(String support) {
    return support.equals("cantilever") ? Leaf.CANTILEVER_RESISTANCE : Leaf.TRACK_RESISTANCE;
  }

  /**
   * Supply voltage (V) that the supplier should keep to at a nominal voltage: ANSI C84.1 at 120 V,
   * 208 V and 240 V, 95 V to 107 V at 100 V, and a tenth either way elsewhere, as EN 50160 has it
   * at 230 V.
   */
  public static Range mains(double nominal) {
    if (nominal == 100) {
      return ServiceVoltage.AT_100;
    }
    return List.of(120.0, 208.0, 240.0).contains(nominal)
        ? ServiceVoltage.rangeA(nominal)
        : ServiceVoltage.en50160(nominal);
  }

  /**
   * Current (A) that the operator takes from the mains with its motor running and its batteries
   * being charged.
   *
   * @param motorCurrent A
   */
  public static double mainsCurrent(double motorCurrent, double nominal) {
    return MainsLoad.current(motorCurrent, MainsLoad.CHARGING, MainsLoad.EFFICIENCY, nominal);
  }

  /**
   * Voltage drop (V) of the feeder at the current of {@link #mainsCurrent}.
   *
   * @param millimetres one way
   * @param temperature degC, limited to the valid range of the conductor's formula
   */
  public static double feederDrop(
      Conductor conductor,
      double millimetres,
      double temperature,
      double motorCurrent,
      double nominal) {
    return conductor.drop(
        mainsCurrent(motorCurrent, nominal), millimetres / 1000, held(temperature));
  }

  /**
   * Voltage drop of the feeder in percent of the nominal voltage.
   *
   * @param size as chosen
   * @param volts nominal, as chosen
   */
  public static double feederPercent(
      String size, double millimetres, double temperature, double motorCurrent, String volts) {
    double nominal = Double.parseDouble(volts);
    return 100
        * feederDrop(conductor(size).orElseThrow(), millimetres, temperature, motorCurrent, nominal)
        / nominal;
  }

  /**
   * Resistance (ohm) of the feeder, there and back.
   *
   * @param millimetres one way
   * @param temperature degC, limited to the valid range of the conductor's formula
   */
  public static double feederLoop(Conductor conductor, double millimetres, double temperature) {
    return conductor.loop(millimetres / 1000, held(temperature));
  }

  private static double held(double temperature) {
    return Math.min(Math.max(temperature, -40), 100);
  }
}
