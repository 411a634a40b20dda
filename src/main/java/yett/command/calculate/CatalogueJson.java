package yett.command.calculate;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Input;
import yett.worksheet.Worksheet;

/** Lists the calculations as JSON for other programs; see {@link CalculationJson}. */
public final class CatalogueJson {
  private CatalogueJson() {}

  private record Needed(
      String name,
      String words,
      String kind,
      Optional<String> unit,
      Optional<String> usual,
      boolean needed,
      Optional<List<String>> choices) {}

  private record Told(String name, String words, Optional<String> unit) {}

  private record Listed(
      String calculation,
      String title,
      String subject,
      List<Needed> inputs,
      List<Told> results,
      String formula,
      String validity,
      String source) {}

  /** The list in one line. */
  public static String list(List<Worksheet> sheets) {
    return CalculationJson.MAPPER.writeValueAsString(
        sheets.stream().map(CatalogueJson::listed).toList());
  }

  private static Listed listed(Worksheet sheet) {
    return new Listed(
        sheet.id(),
        sheet.title(),
        sheet.subject().id(),
        sheet.inputs().stream().map(CatalogueJson::needed).toList(),
        sheet.outputs().stream()
            .map(o -> new Told(o.id(), o.words(), o.unit().map(Unit::symbol)))
            .toList(),
        sheet.formula(),
        sheet.validity(),
        sheet.source());
  }

  private static Needed needed(Input input) {
    return new Needed(
        input.id(),
        input.words(),
        input.kind().name().toLowerCase(Locale.ROOT),
        input.kind() == Input.Kind.READING ? Optional.of(input.unit().symbol()) : Optional.empty(),
        input.usual(),
        input.needed(),
        input.choices().isEmpty()
            ? Optional.empty()
            : Optional.of(input.choices().stream().map(Choice::id).toList()));
  }
}
