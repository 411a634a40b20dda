package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.quantity.Quantity;
import yett.testing.Size;
import yett.worksheet.catalogue.Catalogue;

/** Whatever possible numbers somebody types: a result, or a word why not; never an accident. */
class RandomInputsTest {
  private static final int ROUNDS = Size.of(30, 150);

  static List<Worksheet> withoutFiles() {
    return Catalogue.all().stream()
        .filter(s -> s.inputs().stream().noneMatch(i -> i.kind() == Input.Kind.FILE))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("withoutFiles")
  void a_result_or_a_reason(Worksheet sheet) {
    int solved = 0;
    for (int seed = 0; seed < ROUNDS; seed++) {
      Filling filling = filled(sheet, new Random(seed));
      try {
        Solution solution = filling.solve();
        solved++;
        assertThat(solution.lines()).as("seed %d", seed).isNotEmpty();
        assertThat(solution.meaning().sentences()).as("seed %d", seed).isNotEmpty();
        for (Solution.Line line : solution.lines()) {
          assertThat(line.value().orElse(0)).as("%s, seed %d", line.output().id(), seed).isFinite();
          assertThat(line.text()).doesNotContain("NaN", "Infinity");
        }
        assertThat(solution.meaning().sentences())
            .allMatch(sentence -> sentence.matches("(?s)[A-Z0-9-].*[.!]"), "a sentence");
      } catch (InputException e) {
        assertThat(e.getMessage())
            .as("seed %d", seed)
            .matches("(?s)[A-Za-z0-9].*\\.")
            .doesNotContain("go together");
      }
    }
    assertThat(solved).as("rounds with a result").isPositive();
  }

  private static Filling filled(Worksheet sheet, Random random) {
    Filling filling = new Filling(sheet);
    for (Input input : sheet.inputs()) {
      if (input.needed() || random.nextInt(3) > 0) {
        filling.put(input, typed(input, random));
      }
    }
    return filling;
  }

  private static String typed(Input input, Random random) {
    return switch (input.kind()) {
      case CHOICE -> input.choices().get(random.nextInt(input.choices().size())).id();
      case WHOLE -> Long.toString(Math.round(value(input, random)));
      case READING -> {
        String reading = input.show(input.unit().toCanonical(value(input, random)));
        boolean doubt = random.nextInt(3) == 0 && input.quantity() != Quantity.TEMPERATURE;
        yield doubt && input.quantity() != Quantity.RATIO ? reading + " +- 1 %" : reading;
      }
      case FILE -> throw new IllegalStateException();
    };
  }

  /** Often a bound itself; else spread over the powers of ten. */
  private static double value(Input input, Random random) {
    double low = Math.max(input.possible().low(), -1e4);
    double high = Math.min(input.possible().high(), 1e4);
    return switch (random.nextInt(8)) {
      case 0 -> low;
      case 1 -> high;
      default ->
          low
              + (high - low)
                  * (random.nextBoolean()
                      ? random.nextDouble()
                      : Math.pow(10, -4 * random.nextDouble()));
    };
  }
}
