package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.json.JsonMapper;

/** Texts stand apart from the numbers of the cards, and only as long as they agree with them. */
class TranslationsTest {
  private static final KnowledgeSource SHIPPED = KnowledgeSource.folder(Path.of("knowledge"));
  private static final RuleBase OWN = RuleBase.read(SHIPPED);
  private static final RuleBase GERMAN = RuleBase.read(SHIPPED.in("de"));

  private static final String NAME =
      "cards:\n  cause chain-slack:\n    name: {of: Chain too slack, is: Cadena floja}\n";

  private static SortedMap<String, String> with(String file, String text) {
    SortedMap<String, String> files = new TreeMap<>(SHIPPED.files());
    files.put(file, text);
    return files;
  }

  private static RuleBase in(String language, SortedMap<String, String> files) {
    KnowledgeSource source = () -> files;
    return RuleBase.read(source.in(language));
  }

  @Test
  void the_chain_speaks_german() {
    assertThat(GERMAN.causes().get("chain-slack").name()).isEqualTo("Kette zu locker");
    assertThat(GERMAN.checks().get("chain-looks").outcomes().get(3).text()).contains("lose");
    assertThat(GERMAN.repairs().get("tighten-chain").steps()).first().asString().contains("keilen");
  }

  @Test
  void what_is_not_translated_stands_in_its_own_words() {
    assertThat(GERMAN.causes().get("brake-drags")).isEqualTo(OWN.causes().get("brake-drags"));
    assertThat(GERMAN.causes().get("wheel-worn").arises())
        .isEqualTo(OWN.causes().get("wheel-worn").arises());
  }

  @Test
  void figures_rules_and_the_name_of_the_version_are_the_same() {
    assertThat(GERMAN.fingerprint()).isEqualTo(OWN.fingerprint());
    assertThat(GERMAN.rules()).isEqualTo(OWN.rules());
    OWN.causes()
        .forEach((id, c) -> assertThat(GERMAN.causes().get(id).prior()).isEqualTo(c.prior()));
    OWN.checks()
        .forEach(
            (id, check) -> {
              Check same = GERMAN.checks().get(id);
              assertThat(same.likelihood().keySet()).isEqualTo(check.likelihood().keySet());
              check
                  .likelihood()
                  .forEach((c, row) -> assertThat(same.likelihood().get(c)).isEqualTo(row));
              assertThat(same.needs()).isEqualTo(check.needs());
              assertThat(same.hazards()).isEqualTo(check.hazards());
            });
  }

  @Test
  void every_text_of_the_chain_is_in_german_and_none_is_out_of_date() {
    Untranslated.Of found = Untranslated.language("de", SHIPPED.files());
    assertThat(found.lacking()).noneMatch(Untranslated::stale);
    assertThat(found.lacking()).noneMatch(t -> t.area().equals("chain"));
    assertThat(found.all() - found.lacking().size()).isGreaterThan(150);
  }

  @Test
  void a_text_of_what_the_card_said_before_is_not_shown() {
    SortedMap<String, String> files = with("chain/es.texts.yaml", NAME);
    assertThat(in("es", files).causes().get("chain-slack").name()).isEqualTo("Cadena floja");
    String card = files.get("chain/chain-slack.yaml");
    files.put("chain/chain-slack.yaml", card.replace("name: Chain too slack", "name: Chain slack"));
    assertThat(in("es", files).causes().get("chain-slack").name()).isEqualTo("Chain slack");
    List<Untranslated> stale =
        Untranslated.language("es", files).lacking().stream().filter(Untranslated::stale).toList();
    assertThat(stale)
        .extracting(Untranslated::card, Untranslated::place, Untranslated::area)
        .containsExactly(org.assertj.core.groups.Tuple.tuple("cause chain-slack", "name", "chain"));
  }

  @Test
  void a_language_in_which_nothing_is_written_is_told() {
    assertThatThrownBy(() -> RuleBase.read(SHIPPED.in("dee")))
        .hasMessageContaining("no card has a text in the language \"dee\"")
        .hasMessageContaining("Maybe \"de\"");
  }

  @Test
  void slips_are_told_with_their_place() {
    String text =
        NAME
            + "  cause chain-slak:\n    name: {of: x, is: y}\n"
            + "  check chain-sag:\n    aks: {of: x, is: y}\n";
    assertThatThrownBy(() -> in("", with("chain/es.texts.yaml", text)))
        .hasMessageContaining(
            "chain/es.texts.yaml:4:3: there is no card \"cause chain-slak\"\n  Maybe \"cause chain-slack\"")
        .hasMessageContaining(
            "\"aks\" is not a text of the card \"check chain-sag\"\n  Maybe \"ask\"");
    assertThatThrownBy(() -> in("", with("chain/Spanish.texts.yaml", NAME)))
        .hasMessageContaining("\"Spanish\" is not a language");
  }

  /** The name of what a line has people do is no text; by it another danger rules the line out. */
  @Test
  void a_line_that_another_danger_may_rule_out_is_translated_and_stays_so() {
    String stop =
        "cards:\n  stop person-trapped:\n    now.technician.5: {of: "
            + own("stop person-trapped", "now.technician.5")
            + ", is: Quedarse con la persona.}\n";
    RuleBase spanish = in("es", with("safety/es.texts.yaml", stop));
    List<Stop.Line> lines = spanish.stops().get("person-trapped").now().get(Role.TECHNICIAN);
    assertThat(lines)
        .contains(new Stop.Line("Quedarse con la persona.", Optional.of("stay")))
        .hasSameSizeAs(OWN.stops().get("person-trapped").now().get(Role.TECHNICIAN));
  }

  /** What nobody lists nobody translates. */
  @Test
  void every_line_of_every_stop_and_what_is_read_out_of_histories_is_a_text() {
    List<String> own =
        Untranslated.language("fr", SHIPPED.files()).lacking().stream()
            .map(Untranslated::own)
            .toList();
    assertThat(OWN.stops()).isNotEmpty();
    OWN.stops()
        .values()
        .forEach(
            stop ->
                stop.now().values().stream()
                    .flatMap(List::stream)
                    .forEach(line -> assertThat(own).contains(line.text())));
    assertThat(OWN.histories().values()).isNotEmpty().allMatch(h -> own.contains(h.lay()));
  }

  /** Else a translation would be a way round what an add-on may not do. */
  @Test
  void another_text_of_what_protects_people_is_another_safeguard() {
    String caution =
        "cards:\n  caution chain-draws-in:\n    avoid: {of: \""
            + own("caution chain-draws-in", "avoid")
            + "\", is: Nada}\n";
    RuleBase base = in("de", with("chain/x/de.texts.yaml", caution));
    assertThat(base.safeguards().lacks(GERMAN.safeguards()))
        .containsExactly("caution chain-draws-in");
  }

  private static String own(String card, String place) {
    return Untranslated.language("fr", SHIPPED.files()).lacking().stream()
        .filter(t -> t.card().equals(card) && t.place().equals(place))
        .findFirst()
        .orElseThrow()
        .own();
  }

  @Test
  void rule_bases_and_add_ons_tell_their_versions() {
    assertThat(OWN.versions()).hasSize(1).first().asString().startsWith("Chain-driven");
    SortedMap<String, String> files =
        with("quay/add-on.yaml", "add-on: quay\nname: Quay\nversion: \"1.10\"\n");
    assertThat(in("", files).versions()).contains("Quay 1.10");
    files.put("quay/add-on.yaml", "add-on: quay\nname: Quay\nversion: 1.10\n");
    assertThatThrownBy(() -> in("", files))
        .hasMessageContaining("without quotes 1.10 is the number");
    SortedMap<String, String> two = with("b.yaml", "rule-base: b\nname: B\n");
    assertThatThrownBy(() -> in("", two)).hasMessageContaining("says once which it is");
  }

  @Test
  void names_of_other_cards_are_no_texts() {
    var stop = JsonMapper.shared().createObjectNode();
    stop.put("name", "Somebody is trapped").put("leaves", "isolated");
    assertThat(CardTexts.of("stop", stop)).containsOnlyKeys("name");
    var pressing = JsonMapper.shared().createObjectNode();
    pressing.put("ask", "Does it stand open?").putArray("if-said").add("stays-open");
    assertThat(CardTexts.of("pressing", pressing)).containsOnlyKeys("ask");
  }
}
