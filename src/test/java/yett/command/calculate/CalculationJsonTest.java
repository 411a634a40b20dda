package yett.command.calculate;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yett.worksheet.Subject;
import yett.worksheet.Worked;
import yett.worksheet.Worksheet;
import yett.worksheet.catalogue.Catalogue;

class CalculationJsonTest {

  private static String worked() {
    return CalculationJson.of(
        Worked.out(
                "feeder-drop",
                "supply=24 V",
                "current=15 A +- 0.5 A",
                "length=50 ft",
                "size=awg-12")
            .solution());
  }

  private static Schema schema() throws IOException {
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(Files.readString(Path.of("shared/calculation.schema.json")));
  }

  @Test
  void a_result_has_the_form_of_its_schema() throws IOException {
    assertThat(schema().validate(worked(), InputFormat.JSON)).isEmpty();
    assertThat(schema().validate(worked().replace("\"value\"", "\"worth\""), InputFormat.JSON))
        .isNotEmpty();
  }

  @Test
  void the_schema_knows_every_subject() throws IOException {
    JsonNode subjects =
        JsonMapper.builder()
            .build()
            .readTree(Files.readString(Path.of("shared/calculation.schema.json")))
            .at("/properties/subject/enum");
    assertThat(subjects.valueStream().map(JsonNode::asString))
        .containsExactly(
            java.util.Arrays.stream(Subject.values()).map(Subject::id).toArray(String[]::new));
  }

  @Test
  void numbers_stand_in_the_unit_beside_them() {
    JsonNode root = JsonMapper.builder().build().readTree(worked());
    assertThat(root.at("/calculation").asString()).isEqualTo("feeder-drop");
    assertThat(root.at("/inputs/2/value").asDouble()).isEqualTo(15.24);
    assertThat(root.at("/inputs/2/unit").asString()).isEqualTo("m");
    assertThat(root.at("/inputs/1/standard-uncertainty").asDouble()).isEqualTo(0.288675134595);
    assertThat(root.at("/inputs/4/usual").asBoolean()).isTrue();
    JsonNode longest = root.at("/results/4");
    assertThat(longest.at("/unit").asString()).isEqualTo("m");
    assertThat(longest.at("/customary/unit").asString()).isEqualTo("ft");
    assertThat(longest.at("/value").asDouble() / 0.3048)
        .isCloseTo(
            longest.at("/customary/value").asDouble(), org.assertj.core.data.Offset.offset(1e-9));
  }

  @Test
  void the_list_names_them_all() {
    JsonNode list = JsonMapper.builder().build().readTree(CatalogueJson.list(Catalogue.all()));
    assertThat(list.valueStream().map(n -> n.at("/calculation").asString()))
        .containsExactlyElementsOf(Catalogue.all().stream().map(Worksheet::id).toList());
  }

  @Test
  void a_refusal_has_the_form_of_its_schema() throws IOException {
    Schema refused =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("shared/calculation-refused.schema.json")));
    String whole =
        CalculationJson.of(
            CalculationRefused.whole(java.util.Optional.empty(), "There is no calculation \"x\"."));
    String one =
        CalculationJson.of(
            new CalculationRefused(
                java.util.Optional.of("feeder-drop"),
                "size: ...",
                java.util.List.of(
                    new CalculationRefused.Problem(java.util.Optional.of("size"), "size: ..."))));

    assertThat(refused.validate(whole, InputFormat.JSON)).isEmpty();
    assertThat(refused.validate(one, InputFormat.JSON)).isEmpty();
    assertThat(one)
        .isEqualTo(
            "{\"calculation\":\"feeder-drop\",\"problems\":[{\"input\":\"size\",\"text\":\"size: ...\"}]}");
    assertThat(refused.validate(worked(), InputFormat.JSON)).isNotEmpty();
  }
}
