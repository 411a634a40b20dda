package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import yett.testing.Shipped;

/** Who works on mains parts that are locked off and dead is for the firm to say, aloud. */
class FirmSettingsTest {
  private static final RuleBase BASE = Shipped.BASE;

  private static FirmSettings settings(String text) {
    return FirmSettings.read("firm.yaml", text);
  }

  @Test
  void a_technician_sets_a_selector_and_an_electrician_does_the_wiring_unless_it_is_said() {
    assertThat(BASE.repairs().get("correct-supply-setting").who()).isEqualTo(Role.TECHNICIAN);
    for (String wiring :
        Set.of("replace-supply-fuse", "replace-supply-unit", "mend-feeder-joint")) {
      assertThat(BASE.repairs().get(wiring).who()).as(wiring).isEqualTo(Role.ELECTRICIAN);
    }
    assertThat(FirmSettings.NONE.in(BASE)).isSameAs(BASE);
    assertThat(settings("").in(BASE)).isSameAs(BASE);
    assertThat(settings("mains-parts: {selector: technician, terminal: electrician}\n").in(BASE))
        .isSameAs(BASE);
  }

  @Test
  void a_firm_may_allow_more_and_nothing_but_the_marked_cards_changes() {
    RuleBase firm = settings("mains-parts:\n  terminal: technician\n").in(BASE);

    Set<String> changed =
        BASE.repairs().keySet().stream()
            .filter(id -> !firm.repairs().get(id).equals(BASE.repairs().get(id)))
            .collect(Collectors.toSet());
    assertThat(changed).containsExactlyInAnyOrder("replace-supply-fuse", "replace-supply-unit");
    assertThat(firm.checks().get("supply-fuse").who()).isEqualTo(Role.TECHNICIAN);
    assertThat(firm.repairs().get("mend-feeder-joint").who()).isEqualTo(Role.ELECTRICIAN);
    assertThat(firm.fingerprint()).startsWith(BASE.fingerprint()).endsWith("+terminal=technician");
  }

  @Test
  void a_firm_may_allow_less() {
    RuleBase firm = settings("mains-parts: {selector: electrician}\n").in(BASE);

    assertThat(firm.repairs().get("correct-supply-setting").who()).isEqualTo(Role.ELECTRICIAN);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "mains-parts: {selector: trainee}",
        "mains-parts: {selector: caller}",
        "mains-parts: {feeder: technician}",
        "mains-parts: technician",
        "mains-part: {selector: technician}",
        "[1, 2]"
      })
  void what_cannot_be_meant_is_refused(String text) {
    assertThatThrownBy(() -> settings(text))
        .isInstanceOf(KnowledgeException.class)
        .hasMessageContaining("firm.yaml:1");
  }

  @Test
  void a_firm_says_who_it_is_and_what_it_prints_on() throws IOException {
    String text =
        """
        firm:
          name: Quayside Gates & Sons
          address: [2 Rope Walk, Harrow Quay]
          telephone: "+1 555 0100"
          e-mail: desk@quayside.example
          logo: logo.png
        currency: EUR
        paper: Letter
        mains-parts: {selector: technician}
        """;
    assertThat(settings(text).letterhead())
        .isEqualTo(
            new Letterhead(
                "Quayside Gates & Sons",
                List.of("2 Rope Walk", "Harrow Quay"),
                "+1 555 0100",
                "desk@quayside.example",
                Optional.of("logo.png"),
                Optional.of("EUR"),
                "Letter"));
    assertThat(settings("").letterhead()).isEqualTo(Letterhead.NONE);
    assertThat(Letterhead.NONE.paper()).isEqualTo("A4");
    assertThat(bySchema(text)).isEmpty();
  }

  private static List<String> bySchema(String yaml) throws IOException {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Files.readString(Path.of("shared/firm.schema.json")));
    return schema.validate(yaml, InputFormat.YAML).stream().map(Object::toString).toList();
  }

  /**
   * What the reader refuses the schema refuses too, so that an editor shows it while it is written.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "paper: A5",
        "currency: euros",
        "firm: {nmae: Quayside}",
        "firm: {address: {street: Rope Walk}}",
        "firm: Quayside",
        "colour: blue",
        "mains-parts: {selector: caller}"
      })
  void what_is_no_setting_is_refused_with_its_line(String text) throws IOException {
    assertThatThrownBy(() -> settings(text))
        .isInstanceOf(KnowledgeException.class)
        .hasMessageContaining("firm.yaml:1");
    assertThat(bySchema(text)).isNotEmpty();
  }

  @Test
  void a_wrong_letterhead_stops_what_is_printed_and_not_the_work_at_a_gate() {
    assertThat(FirmSettings.forWork("firm.yaml", "paper: A5\ninspect-every: 6\n").inspectEvery())
        .isEqualTo(6);
    assertThatThrownBy(() -> settings("paper: A5"))
        .hasMessageContaining("in the settings of the firm");
    assertThatThrownBy(() -> FirmSettings.forWork("firm.yaml", "mains-parts: {moon: electrician}"))
        .hasMessageContaining("is not a mains part");
  }

  @Test
  void the_letters_of_a_currency_are_those_of_ISO_4217() {
    assertThatThrownBy(() -> settings("currency: XQZ"))
        .hasMessageContaining("\"XQZ\" is not a currency")
        .hasMessageContaining("such as EUR or USD");
  }

  /** Rule 0023: no folder of cards loosens what the firm has not. */
  @ParameterizedTest
  @ValueSource(strings = {"selector", ""})
  void an_add_on_puts_no_card_under_another_setting(String part) {
    SortedMap<String, String> files =
        new TreeMap<>(KnowledgeSource.folder(Path.of("knowledge")).files());
    files.put(
        "quay/add-on.yaml",
        "add-on: quay\nname: Quay\nreplaces: {repair: [replace-supply-fuse]}\n");
    files.put(
        "quay/fuse.yaml",
        """
        repair: replace-supply-fuse
        name: Replace the fuse
        removes: {dc-supply-dead: 0.3}
        minutes: 10
        needs: [locked-off]
        who: electrician
        hazards: [mains, stored-energy]
        entails: [dc-supply-voltage]
        proofs: [power-loss-behaviour, reversal-closing, reversal-opening, warning-signs-present]
        %s
        source: Harrow Quay
        """
            .formatted(part.isEmpty() ? "" : "mains-part: " + part));

    assertThatThrownBy(() -> RuleBase.read(() -> files))
        .hasMessageContaining("would lose \"mains-part: terminal\"");
  }

  @Test
  void an_add_on_marks_no_card_that_was_none_of_the_firms() {
    SortedMap<String, String> files =
        new TreeMap<>(KnowledgeSource.folder(Path.of("knowledge")).files());
    files.put(
        "quay/add-on.yaml", "add-on: quay\nname: Quay\nreplaces: {repair: [remake-earth-bond]}\n");
    files.put(
        "quay/bond.yaml",
        """
        repair: remake-earth-bond
        name: Make the bond anew
        removes: {earth-poor: 0.5}
        minutes: 30
        needs: [locked-off]
        who: electrician
        mains-part: selector
        hazards: [mains]
        entails: [bond-resistance, earth-resistance]
        proofs: [warning-signs-present]
        source: Harrow Quay
        """);

    assertThatThrownBy(() -> RuleBase.read(() -> files))
        .hasMessageContaining("would lose that it is no work on a mains part");
  }
}
