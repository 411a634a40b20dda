package yett.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.worksheet.catalogue.Catalogue;

/** What every calculation owes to those who use it. */
class CatalogueTest {
  private static final String NAME = "[a-z0-9]+(-[a-z0-9]+)*";

  static List<Worksheet> all() {
    return Catalogue.all();
  }

  @Test
  void names_are_used_once() {
    assertThat(all().stream().map(Worksheet::id)).doesNotHaveDuplicates();
    assertThat(all()).isNotEmpty();
  }

  @ParameterizedTest
  @MethodSource("all")
  void it_says_what_it_is_and_where_it_comes_from(Worksheet sheet) {
    assertThat(sheet.id()).matches(NAME);
    assertThat(sheet.title()).isNotBlank().doesNotEndWith(".");
    assertThat(sheet.formula()).isNotBlank();
    assertThat(sheet.validity()).isNotBlank().endsWith(".");
    assertThat(sheet.source()).isNotBlank();
    sheet.lastWord().ifPresent(word -> assertThat(word).endsWith("."));
    sheet.notes().forEach(note -> assertThat(note.text()).endsWith("."));
  }

  @ParameterizedTest
  @MethodSource("all")
  void its_inputs_can_be_asked_for(Worksheet sheet) {
    assertThat(sheet.inputs()).isNotEmpty();
    assertThat(sheet.inputs().stream().map(Input::id)).doesNotHaveDuplicates();
    for (Input input : sheet.inputs()) {
      assertThat(input.id()).matches(NAME).hasSizeLessThanOrEqualTo(24);
      assertThat(input.words()).as(input.id()).isNotBlank().doesNotEndWith(".");
      assertThat(input.kind() == Input.Kind.CHOICE).isEqualTo(!input.choices().isEmpty());
      assertThat(input.choices().stream().map(Choice::id))
          .allMatch(id -> id.matches(NAME))
          .doesNotHaveDuplicates();
      input
          .usual()
          .ifPresent(
              u -> assertThatCode(() -> InputReader.read(input, u)).doesNotThrowAnyException());
      if (input.usual().isPresent() && input.kind() == Input.Kind.READING) {
        double usual =
            input.unit().fromCanonical(InputReader.read(input, input.usual().get()).value());
        assertThat(input.good().contains(usual)).as("usual of " + input.id()).isTrue();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void its_results_are_named(Worksheet sheet) {
    assertThat(sheet.outputs()).isNotEmpty();
    assertThat(sheet.outputs().stream().map(Output::id)).doesNotHaveDuplicates();
    for (Output output : sheet.outputs()) {
      assertThat(output.id()).matches(NAME);
      assertThat(output.words()).isNotBlank().doesNotEndWith(".").hasSizeLessThanOrEqualTo(24);
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void every_name_is_used_once_and_its_sentences_name_only_those(Worksheet sheet) {
    List<String> names =
        Stream.of(
                sheet.inputs().stream().map(Input::id),
                sheet.outputs().stream().map(Output::id),
                sheet.steps.stream().map(Output::id))
            .flatMap(ids -> ids)
            .toList();
    assertThat(names).doesNotHaveDuplicates();
    assertThat(
            Stream.of(
                    sheet.refusals.stream(),
                    sheet.remarks.stream(),
                    sheet.says.stream().flatMap(List::stream))
                .flatMap(says -> says)
                .flatMap(Statement::names))
        .isSubsetOf(names);
  }
}
