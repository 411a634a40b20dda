package yett.command.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.bench.Draft;
import yett.bench.NewFiles;
import yett.console.Layout;
import yett.console.PlainConsole;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

/** Answers typed at a terminal, taken back, looked up and kept. */
class NewCardFormTest {
  private static final RuleBase BASE =
      RuleBase.read(KnowledgeSource.folder(Path.of("src/test/resources/every-field")));

  @TempDir private Path folder;

  private final ByteArrayOutputStream screen = new ByteArrayOutputStream();

  private NewCardForm form(String kind, Map<String, String> given, String... typed) {
    String lines = typed.length == 0 ? "" : String.join("\n", typed) + "\n";
    PrintStream out = new PrintStream(screen, true, StandardCharsets.UTF_8);
    PlainConsole console =
        new PlainConsole(
            new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)),
            out,
            out,
            new Layout(100, false, true),
            true);
    return new NewCardForm(
        console, NewFiles.card(kind, BASE).orElseThrow(), new Draft(folder, kind), given);
  }

  private String screen() {
    return screen.toString(StandardCharsets.UTF_8);
  }

  private Map<String, String> kept() {
    return new Draft(folder, "repair").answers();
  }

  @Test
  void back_takes_the_last_answer_back_and_offers_it_again() {
    Optional<Map<String, String>> answers =
        form(
                "repair",
                Map.of("area", "battery"),
                "back",
                "new-led",
                "Fit a new lead",
                "back",
                "back",
                "new-lead",
                "", // the name as before
                "charger-dead sometimes",
                "20",
                "Fit it.",
                "cover-off",
                "back",
                "-",
                "",
                "",
                "",
                "",
                "")
            .fill();
    assertThat(screen())
        .contains("There is no question before this one.")
        .contains("(Enter: new-led)", "(Enter: Fit a new lead)", "(Enter: cover-off; - for none)");
    assertThat(answers.orElseThrow())
        .containsEntry("id", "new-lead")
        .containsEntry("name", "Fit a new lead")
        .containsEntry("area", "battery")
        .containsEntry("needs", "")
        .containsEntry("who", "technician");
  }

  @Test
  void going_back_over_an_answer_that_leads_to_others_asks_those_anew() {
    form(
            "check",
            Map.of(),
            "lid-look",
            "How does the lid sit?",
            "",
            "battery",
            "",
            "",
            "shut: shut; open: open",
            "charger-dead",
            "back",
            "batteries-low",
            "open often")
        .fill();
    assertThat(new Draft(folder, "check").answers())
        .containsEntry("causes", "batteries-low")
        .containsEntry("batteries-low", "open often")
        .doesNotContainKey("charger-dead");
  }

  @Test
  void what_was_answered_is_kept_when_the_input_ends_and_gone_on_with() {
    assertThat(form("repair", Map.of(), "new-lead", "Fit a new lead", "battery").fill()).isEmpty();
    assertThat(screen())
        .contains("No card was written. Your answers are kept in ", ".new-repair.draft");
    assertThat(kept()).containsOnlyKeys("id", "name", "area");

    screen.reset();
    form("repair", Map.of(), "", "", "charger-dead").fill();
    assertThat(screen())
        .contains("There are 3 answers from an earlier start: id=new-lead, name=Fit a new lead")
        .contains("(Enter: battery)")
        .doesNotContain("Id of the repair");
    assertThat(kept()).containsEntry("area", "battery").containsEntry("removes", "charger-dead");

    screen.reset();
    form("repair", Map.of(), "maybe", "no", "other-lead").fill();
    assertThat(screen()).contains("Type yes or no.", "Id of the repair");
    assertThat(kept()).isEqualTo(Map.of("id", "other-lead"));
  }

  @Test
  void nothing_is_kept_of_nothing() {
    assertThat(form("repair", Map.of()).fill()).isEmpty();
    assertThat(screen()).contains("Nothing was written.");
    assertThat(kept()).isEmpty();
  }

  @Test
  void a_draft_that_no_longer_fits_is_taken_as_far_as_it_does() throws IOException {
    Files.writeString(
        folder.resolve(".new-repair.draft"),
        "id=new-lead\nname=New lead\nno line of ours\narea=batery\nremoves=charger-dead\n");
    form("repair", Map.of(), "yes", "", "battery", "").fill();
    assertThat(screen()).contains("Area under which");
    assertThat(kept())
        .containsExactlyInAnyOrderEntriesOf(
            Map.of(
                "id", "new-lead",
                "name", "New lead",
                "area", "battery",
                "removes", "charger-dead"));
  }

  @Test
  void what_is_wrong_in_the_end_is_asked_again() {
    NewCardForm form =
        form(
            "repair",
            Map.of(
                "id",
                "x",
                "name",
                "X",
                "area",
                "battery",
                "removes",
                "charger-dead",
                "minutes",
                "5",
                "steps",
                "Do it.",
                "needs",
                "",
                "who",
                "technician",
                "hazards",
                "",
                "entails",
                ""),
            "runs-without-mains",
            "from memory",
            "back",
            "",
            "from a book",
            "-");
    assertThat(form.fill().orElseThrow()).containsEntry("source", "from memory");
    assertThat(form.askAgain().orElseThrow())
        .containsEntry("source", "from a book")
        .containsEntry("proofs", "runs-without-mains");
    assertThat(form.askAgain().orElseThrow())
        .as("a hyphen is the usual answer, and no words of a card")
        .containsEntry("source", "considered judgement");
    assertThat(screen()).contains("(Enter: from a book; - for considered judgement)");
  }

  @Test
  void a_question_mark_lists_ids_with_their_words_and_looks_words_up() {
    form(
            "case",
            Map.of("id", "one", "area", "battery", "story", "It stood.", "person", "technician"),
            "? mains",
            "flurble",
            "",
            "",
            "?",
            "? charger not",
            "? wingnut")
        .fill();
    assertThat(screen())
        .contains("dead-without-mains:", "There is no complaint \"flurble\".", "? lists all")
        .containsPattern("charger-dead: +Charger does not charge")
        .contains("1 of 4; ? lists all.", "Nothing has \"wingnut\"; ? lists all 4.", "4 in all.");
  }

  @Test
  void effects_are_picked_by_number_or_word_and_what_follows_is_shown_at_once() {
    form(
            "cause",
            Map.of("id", "x", "name", "X", "area", "battery", "only-if", "", "prior", "1"),
            "? gives way",
            "7",
            "suply-sags",
            "2 sumtimes",
            "2 always",
            "")
        .fill();
    assertThat(screen())
        .contains("2 supply-sags: The supply gives way under load", "Other areas: no area 1.")
        .containsPattern("supply-sags: +battery 2, The supply gives way under load")
        .contains("There is no effect 7: there are 2.")
        .contains("There is no effect \"suply-sags\". Maybe \"supply-sags\".")
        .contains("\"sumtimes\" is not a probability.")
        // 0.99 x 0.7 x 0.3 of the effect behind it; 0.99 x 0.65
        .contains("So people say: dead-without-mains 0.21 (sound gate 0.01")
        .contains("So checks show: battery-rest-voltage low 0.64 (sound gate 0.07).")
        .contains("The same comes of: batteries-low.")
        .contains("What do people say that does not follow from that?");
    assertThat(new Draft(folder, "cause").answers()).containsEntry("leads-to", "2 always");
  }

  @Test
  void outcomes_and_set_ups_are_listed_with_their_words() {
    form(
            "cause",
            Map.of(
                "id",
                "x",
                "name",
                "X",
                "area",
                "battery",
                "only-if",
                "",
                "leads-to",
                "",
                "like",
                "charger-dead",
                "complaints",
                "",
                "after",
                ""),
            "",
            "",
            "",
            "?")
        .fill();
    assertThat(screen())
        .containsPattern("dark: +it is dark")
        .containsPattern("nearly always: +a chance of 0.92");
    screen.reset();
    form(
            "repair",
            Map.of(
                "id",
                "x",
                "name",
                "X",
                "area",
                "battery",
                "removes",
                "charger-dead",
                "minutes",
                "5",
                "steps",
                "Do it."),
            "? off")
        .fill();
    assertThat(screen()).containsPattern("cover-off: +\\S+ ");
  }

  @Test
  void a_row_is_read_back_with_what_seeing_it_will_say() {
    form(
            "cause",
            Map.of(
                "id",
                "x",
                "name",
                "X",
                "area",
                "battery",
                "only-if",
                "",
                "leads-to",
                "",
                "after",
                ""),
            "",
            "charger-dead",
            "dead-without-mains often",
            "charged sometimes, low often",
            "low 0.01")
        .fill();
    // By hand: 10 log10 of (0.995 p + 0.0025) over the same of the other, with three outcomes
    // 0.0017.
    assertThat(screen())
        .contains("  dead-without-mains said 65 of a hundred times: +")
        .contains("  Of a hundred such gates: charged 25, low 65, flat 10.")
        .contains(
            "  Seen low: +9.6 dB against a sound gate, -0.6 dB against charger-dead.",
            "  Mind: low speaks against the new cause, for a sound gate shows it more often (2.5 of a"
                + " hundred).")
        .doesNotContain("Mind: charged");
  }
}
