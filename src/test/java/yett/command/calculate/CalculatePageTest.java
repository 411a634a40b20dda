package yett.command.calculate;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import yett.wording.Wording;
import yett.worksheet.Input;
import yett.worksheet.Output;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;
import yett.worksheet.catalogue.Catalogue;

/**
 * The list in docs/calculate.md is made of the calculations themselves. Write it anew with {@code
 * mvn test -Dtest=CalculatePageTest -Dyett.write=true}.
 */
class CalculatePageTest {
  private static final Path PAGE = Path.of("docs/calculate.md");
  private static final String MARK = "<!-- Below: made by CalculatePageTest; do not edit. -->\n";

  @Test
  void the_page_tells_every_calculation() throws IOException {
    String page = Files.readString(PAGE);
    String head = page.substring(0, page.indexOf(MARK) + MARK.length());
    String expected = head + list();
    if (Boolean.getBoolean("yett.write")) {
      Files.writeString(PAGE, expected);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(expected);
  }

  private static String list() {
    StringBuilder text = new StringBuilder();
    for (Subject subject : Subject.values()) {
      if (!Catalogue.about(subject).isEmpty()) {
        text.append("\n## ").append(subject.title()).append('\n');
        Catalogue.about(subject).forEach(sheet -> append(text, sheet));
      }
    }
    return text.toString();
  }

  private static void append(StringBuilder text, Worksheet sheet) {
    text.append("\n### ").append(sheet.id()).append("\n");
    text.append(Wording.capital(sheet.title())).append(".\n\n| input | |\n|---|---|\n");
    for (Input input : sheet.inputs()) {
      text.append("| `").append(input.id()).append("` | ");
      text.append(InputViews.described(input)).append(" |\n");
    }
    text.append("\n| result | |\n|---|---|\n");
    for (Output output : sheet.outputs()) {
      text.append("| `").append(output.id()).append("` | ");
      text.append(CalculationViews.described(output)).append(" |\n");
    }
    text.append("\nFormula: `").append(sheet.formula()).append("`\n\n");
    text.append("Good for: ").append(sheet.validity()).append("\n\n");
    text.append("Source: ").append(sheet.source()).append(".\n");
    sheet.lastWord().ifPresent(word -> text.append("\nLast word: ").append(word).append('\n'));
  }
}
