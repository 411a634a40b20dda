package yett.command.calculate;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.json.JsonMapper;
import yett.quantity.Unit;
import yett.worksheet.Given;
import yett.worksheet.Input;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Solution;
import yett.worksheet.Worksheet;

/**
 * Writes calculations as JSON for other programs, in the form of {@code
 * shared/calculation.schema.json}. Numbers are in the unit given next to them and not rounded.
 */
public final class CalculationJson {
  static final JsonMapper MAPPER =
      JsonMapper.builder()
          .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
          .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
          .changeDefaultPropertyInclusion(i -> i.withValueInclusion(JsonInclude.Include.NON_ABSENT))
          .build();

  private CalculationJson() {}

  private record Entry(
      String name,
      String words,
      String typed,
      boolean usual,
      Optional<Double> value,
      Optional<String> unit,
      Optional<Double> standardUncertainty) {}

  private record Customary(double value, String unit) {}

  private record Outcome(
      String name,
      String words,
      String text,
      Optional<Double> value,
      Optional<String> unit,
      Optional<Customary> customary,
      Optional<Double> standardUncertainty) {}

  private record Refused(Optional<String> calculation, List<CalculationRefused.Problem> problems) {}

  private record Signal(String word, String text) {}

  private record Worked(
      String calculation,
      String title,
      String subject,
      List<Entry> inputs,
      List<Outcome> results,
      List<String> remarks,
      List<String> meaning,
      List<Signal> cautions,
      Optional<String> lastWord,
      String formula,
      String validity,
      String source) {}

  /** A finished calculation, in one line. */
  public static String of(Solution solution) {
    Worksheet sheet = solution.sheet();
    return MAPPER.writeValueAsString(
        new Worked(
            sheet.id(),
            sheet.title(),
            sheet.subject().id(),
            solution.inputs().stream().map(CalculationJson::entry).toList(),
            solution.lines().stream().map(CalculationJson::outcome).toList(),
            solution.remarks(),
            solution.meaning().sentences().stream().map(CalculationJson::plain).toList(),
            Stream.concat(sheet.notes().stream(), solution.meaning().notes().stream())
                .map(CalculationJson::signal)
                .toList(),
            sheet.lastWord(),
            sheet.formula(),
            sheet.validity(),
            sheet.source()));
  }

  /** A refused calculation with its problems, in one line. */
  public static String of(CalculationRefused refused) {
    return MAPPER.writeValueAsString(new Refused(refused.calculation(), refused.problems()));
  }

  private static Entry entry(Given given) {
    Input input = given.input();
    boolean number = input.kind() == Input.Kind.READING || input.kind() == Input.Kind.WHOLE;
    return new Entry(
        input.id(),
        input.words(),
        input.kind() == Input.Kind.CHOICE ? given.choice().id() : given.typed(),
        given.usual(),
        number ? Optional.of(clean(input.unit().fromCanonical(given.value()))) : Optional.empty(),
        number ? Optional.of(input.unit().symbol()) : Optional.empty(),
        given.standardUncertainty() > 0
            ? Optional.of(difference(given.standardUncertainty(), input.unit()))
            : Optional.empty());
  }

  private static Outcome outcome(Solution.Line line) {
    Output output = line.output();
    Optional<Unit> unit = output.unit();
    OptionalDouble value = line.value();
    boolean both = value.isPresent() && !output.unit().equals(output.customary());
    return new Outcome(
        output.id(),
        output.words(),
        line.text(),
        value.isPresent()
            ? Optional.of(clean(unit.orElseThrow().fromCanonical(value.getAsDouble())))
            : Optional.empty(),
        unit.map(Unit::symbol),
        both
            ? output
                .customary()
                .map(u -> new Customary(clean(u.fromCanonical(value.getAsDouble())), u.symbol()))
            : Optional.empty(),
        line.standardUncertainty().isPresent()
            ? Optional.of(difference(line.standardUncertainty().getAsDouble(), unit.orElseThrow()))
            : Optional.empty());
  }

  private static Signal signal(Note note) {
    return new Signal(note.word().name(), note.text());
  }

  /** Converts a difference from the canonical unit to another unit. */
  private static double difference(double canonical, Unit unit) {
    return clean(canonical / unit.differenceToCanonical(1));
  }

  /** The value without the last digits, which are only rounding errors of the conversion. */
  private static double clean(double value) {
    return Double.isFinite(value)
        ? BigDecimal.valueOf(value).round(new MathContext(12)).doubleValue()
        : value;
  }

  private static String plain(String sentence) {
    return sentence.replace('\u00a0', ' ');
  }
}
