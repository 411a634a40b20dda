package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.knowledge.Cause;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.testing.WithEffects;

class NewFilesTest {
  private static final Path CARDS = Path.of("src/test/resources/every-field");

  private static final Map<String, String> LEAD_LOOSE =
      Map.of(
          "id", "charger-lead-loose",
          "name", "Charger lead loose: it comes and goes",
          "area", "battery",
          "prior", "0.4",
          "like", "charger-dead, batteries-low",
          "complaints", "dead-without-mains often",
          "battery-rest-voltage", "low usually, flat sometimes",
          "lamp-seen", "flickers usually",
          "repair", "Fasten the lead of the charger");

  @TempDir private Path folder;

  private NewFiles bench() throws IOException {
    for (Map.Entry<String, String> file : KnowledgeSource.folder(CARDS).files().entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue());
    }
    SortedMap<String, String> files = KnowledgeSource.folder(folder).files();
    return new NewFiles(folder, files, files);
  }

  /** Answers as given, the usual for the rest. */
  private static Map<String, String> answers(NewCard card, Map<String, String> given) {
    Map<String, String> answers = new HashMap<>();
    for (Optional<Question> next = next(card, answers); next.isPresent(); ) {
      Question question = next.get();
      String answer =
          Optional.ofNullable(given.get(question.key())).or(question::usual).orElse("-");
      assertThat(question.complaint().apply(answer)).as(question.key() + "=" + answer).isEmpty();
      answers.put(question.key(), answer);
      next = next(card, answers);
    }
    return answers;
  }

  private static Optional<Question> next(NewCard card, Map<String, String> answers) {
    return card.questions(answers).stream().filter(q -> !answers.containsKey(q.key())).findFirst();
  }

  private static Map<String, String> with(Map<String, String> some, String... more) {
    Map<String, String> all = new HashMap<>(some);
    for (int i = 0; i < more.length; i += 2) {
      all.put(more[i], more[i + 1]);
    }
    return all;
  }

  @Test
  void a_new_cause_is_written_against_its_neighbours_with_a_case_beside_it() throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("cause").orElseThrow();
    Map<String, String> given =
        with(
            LEAD_LOOSE,
            "repair-minutes",
            "10",
            "repair-steps",
            "Lock off.; Fasten the lead, and tie it up.",
            "repair-needs",
            "cover-off",
            "repair-proofs",
            "runs-without-mains");
    SortedMap<String, String> files = card.files(answers(card, given));
    assertThat(bench.problems(files)).isEmpty();
    assertThat(files.get("battery/charger-lead-loose.yaml"))
        .contains(
            "name: \"Charger lead loose: it comes and goes\"",
            "  #   charger-dead: charged 0.00, low 0.75, flat 0.25\n"
                + "  #   batteries-low: charged 0.10, low 0.40, flat 0.50\n"
                + "  #   a sound gate: charged 0.92, low 0.07, flat 0.01\n"
                + "  battery-rest-voltage: {low: usually, flat: sometimes}\n",
            "  - Fasten the lead, and tie it up.\n");

    assertThat(bench.advice(files, given))
        .containsExactly(
            "Best told apart from charger-dead by charging-voltage (91 %). You said nothing about"
                + " that, so it counts as on a sound gate; if that is wrong, give it a row.",
            "Best told apart from batteries-low by lamp-seen (67 %).");
    List<Path> written = bench.write(files);
    assertThat(written)
        .containsExactly(
            folder.resolve("battery/charger-lead-loose.case.yaml"),
            folder.resolve("battery/charger-lead-loose.yaml"));
    Checked checked = new Checker().check(KnowledgeSource.folder(folder).files());
    assertThat(checked.problems()).isEmpty();
    assertThat(checked.cases()).isEqualTo(1);
    assertThat(written.get(1))
        .content()
        .startsWith(
            "# yaml-language-server: $schema=../shared/card.schema.json\ncause: charger-lead");
    assertThat(folder.resolve("shared/card-cause.schema.json"))
        .hasSameTextualContentAs(Path.of("shared/card-cause.schema.json"));
    RuleBase base = checked.base();
    Cause cause = base.causes().get("charger-lead-loose");
    assertThat(cause.prior()).isEqualTo(0.004);
    double[] sound = base.checks().get("lamp-seen").otherwise();
    double others = sound[0] + sound[2];
    assertThat(base.checks().get("lamp-seen").likelihood().get(cause.id()))
        .containsExactly(0.25 * sound[0] / others, 0.75, 0.25 * sound[2] / others);
    assertThat(base.repairs().get("mend-charger-lead-loose").removes())
        .isEqualTo(Map.of(cause.id(), 0.92));
  }

  private static final Map<String, String> NEW_REPAIR =
      with(
          LEAD_LOOSE,
          "repair-minutes",
          "10",
          "repair-steps",
          "Lock off.; Fasten the lead.",
          "repair-needs",
          "cover-off",
          "repair-proofs",
          "runs-without-mains");

  @Test
  void the_check_that_settles_it_comes_before_the_new_repair() throws IOException {
    NewCard card = bench().card("cause").orElseThrow();
    String path = "battery/charger-lead-loose.yaml";
    assertThat(card.files(answers(card, NEW_REPAIR)).get(path))
        .contains("measure-first: [lamp-seen]\n");
    Map<String, String> none = with(NEW_REPAIR, "repair-measure-first", "none");
    assertThat(card.files(answers(card, none)).get(path)).doesNotContain("measure-first");
    Map<String, String> other = with(NEW_REPAIR, "repair-measure-first", "charging-voltage");
    assertThat(card.files(answers(card, other)).get(path))
        .contains("measure-first: [charging-voltage]\n");
  }

  @Test
  void complaints_that_make_it_sure_by_themselves_are_told_of() throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("cause").orElseThrow();
    Map<String, String> sure = with(NEW_REPAIR, "prior", "80", "complaints", "dead-without-mains");
    Map<String, String> answers = answers(card, sure);
    assertThat(bench.advice(card.files(answers), answers))
        .anyMatch(
            line ->
                line.matches(
                    "With these complaints alone \\(dead-without-mains\\) it stands at 9\\d %; before"
                        + " mend-charger-lead-loose comes all the same: lamp-seen\\."));
    Map<String, String> none = answers(card, with(sure, "repair-measure-first", "none"));
    assertThat(bench.advice(card.files(none), none))
        .anyMatch(line -> line.contains("may come before any check of charger-lead-loose."));
    assertThat(bench.advice(card.files(answers(card, NEW_REPAIR)), answers(card, NEW_REPAIR)))
        .noneMatch(line -> line.contains("With these complaints alone"));
  }

  @Test
  void a_caller_is_given_no_work_at_the_chain_or_inside_the_operator() throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("cause").orElseThrow();
    Map<String, String> given =
        with(
            NEW_REPAIR,
            "repair-needs",
            "",
            "repair-who",
            "caller",
            "repair-steps",
            "Run the gate with the cover off and reach in; push the sprocket by hand");
    assertThat(bench.problems(card.files(answers(card, given))))
        .extracting(Problem::kind)
        .containsExactly("not-for-a-caller");
  }

  @Test
  void a_prior_out_of_all_proportion_is_answered_with_the_highest_of_the_others()
      throws IOException {
    NewCard card = bench().card("cause").orElseThrow();
    Question prior = question(card, "prior");
    assertThat(prior.told().apply("80"))
        .singleElement()
        .asString()
        .contains("The highest of the other causes, batteries-low, is at 5 of a hundred");
    assertThat(prior.told().apply("2")).isEmpty();
  }

  @Test
  void a_history_that_changes_nothing_is_not_taken() throws IOException {
    Question after = question(bench().card("cause").orElseThrow(), "after");
    assertThat(after.complaint().apply("thunderstorm 1")).isPresent();
    assertThat(after.complaint().apply("thunderstorm 3")).isEmpty();
  }

  private static Question question(NewCard card, String key) {
    return card.questions(Map.of()).stream()
        .filter(q -> q.key().equals(key))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_new_check_may_be_for_some_gates_only_and_gets_its_question_mark() throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("check").orElseThrow();
    Map<String, String> given =
        Map.of(
            "id", "lead-look",
            "ask", "How does the lead of the charger sit",
            "area", "battery",
            "only-if", "batteries sealed open",
            "outcomes", "fast: it sits fast; loose: it comes off",
            "causes", "charger-dead",
            "charger-dead", "loose often",
            "minutes", "2");
    SortedMap<String, String> files = card.files(answers(card, given));
    assertThat(bench.problems(files)).isEmpty();
    assertThat(files.get("battery/lead-look.yaml"))
        .contains("ask: How does the lead of the charger sit?\n")
        .contains("only-if: {batteries: [sealed, open]}\n");
  }

  @Test
  void a_repair_that_is_there_is_not_asked_about_again() throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("cause").orElseThrow();
    Map<String, String> answers = answers(card, with(LEAD_LOOSE, "repair", "replace-charger"));
    assertThat(answers).doesNotContainKey("repair-minutes");
    bench.write(card.files(answers));
    RuleBase base = RuleBase.read(KnowledgeSource.folder(folder));
    assertThat(base.repairs().get("replace-charger").removes())
        .containsEntry("charger-lead-loose", 0.92)
        .containsEntry("charger-dead", 0.96);
  }

  @Test
  void what_happened_before_it_is_on_card_and_case() throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("cause").orElseThrow();
    SortedMap<String, String> files =
        card.files(
            answers(
                card, with(LEAD_LOOSE, "repair", "replace-charger", "after", "thunderstorm 3")));
    assertThat(files.get("battery/charger-lead-loose.yaml")).contains("after: {thunderstorm: 3}\n");
    assertThat(files.get("battery/charger-lead-loose.case.yaml"))
        .contains("history: [thunderstorm]\n");
    assertThat(bench.problems(files)).isEmpty();
    bench.write(files);
    assertThat(RuleBase.read(KnowledgeSource.folder(folder)).histories().get("thunderstorm").odds())
        .containsEntry("charger-lead-loose", 3.0);
  }

  @Test
  void a_new_area_is_begun_when_it_is_said_so() throws IOException {
    NewCard card = bench().card("cause").orElseThrow();
    Map<String, String> given = with(LEAD_LOOSE, "area", "new docks", "repair", "replace-charger");
    SortedMap<String, String> files = card.files(answers(card, given));
    assertThat(files.get("docks/charger-lead-loose.yaml")).contains("area: docks\n");
  }

  @Test
  void the_case_complains_of_what_is_said_more_often_than_not() throws IOException {
    NewCard card = bench().card("cause").orElseThrow();
    Map<String, String> given = with(LEAD_LOOSE, "repair", "replace-charger");
    String path = "battery/charger-lead-loose.case.yaml";
    assertThat(card.files(answers(card, given)).get(path))
        .contains("complaints: [dead-without-mains]\n");
    assertThat(RowAnswer.likely("slow rarely, dead often, noisy 0.5"))
        .containsExactly("dead", "noisy");
    assertThat(RowAnswer.likely("slow rarely, dead sometimes")).containsExactly("dead");
    assertThat(RowAnswer.likely("")).isEmpty();
  }

  @Test
  void checks_that_are_named_besides_are_asked_about_too() throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("cause").orElseThrow();
    Map<String, String> given =
        with(LEAD_LOOSE, "repair", "replace-charger", "also", "lamp-asked", "lamp-asked", "dark");
    String text = card.files(answers(card, given)).get("battery/charger-lead-loose.yaml");
    assertThat(text).contains("  lamp-asked: {dark: usually}\n");
  }

  /** As many look-alikes as there are seeds of how they show, each answered at random. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  void nothing_that_was_answered_is_lost(long seed) throws IOException {
    Random random = new Random(seed);
    StringBuilder more = new StringBuilder();
    for (int cause = 0; cause < 6; cause++) {
      more.append(
          """
          cause: cause-%d
          name: Cause %d
          prior: 0.01
          removed-by: {charge-batteries: 0.5}
          source: considered judgement
          shows:
          """
              .formatted(cause, cause));
      for (int check = 0; check < 14; check++) {
        double odd = Math.round(100 * random.nextDouble()) / 100.0;
        more.append(
            String.format(Locale.ROOT, "  check-%d: {odd: %.2f, so: %.2f}\n", check, odd, 1 - odd));
      }
      more.append("---\n");
    }
    for (int check = 0; check < 14; check++) {
      more.append(
          """
          check: check-%d
          ask: What is it like?
          minutes: 1
          who: caller
          outcomes: {so: as usual, odd: not as usual}
          otherwise: {so: 0.9, odd: 0.1}
          source: considered judgement
          ---
          """
              .formatted(check));
    }
    Files.writeString(folder.resolve("more.yaml"), more);
    NewFiles bench = bench();
    NewCard card = bench.card("cause").orElseThrow();
    Map<String, String> answers = new LinkedHashMap<>();
    String like = "cause-0, cause-1, cause-2, cause-3, cause-4, cause-5";
    Map<String, String> given = with(LEAD_LOOSE, "like", like, "repair", "replace-charger");
    for (Optional<Question> next = next(card, answers); next.isPresent(); ) {
      String key = next.get().key();
      String usual = next.get().usual().orElse("-");
      answers.put(
          key,
          key.startsWith("check-")
              ? "odd 0." + (1 + random.nextInt(9))
              : given.getOrDefault(key, usual));
      next = next(card, answers);
    }
    String text = card.files(answers).get("battery/charger-lead-loose.yaml");
    assertThat(answers.keySet())
        .filteredOn(k -> k.startsWith("check-"))
        .hasSizeGreaterThanOrEqualTo(8);
    for (Map.Entry<String, String> answer : answers.entrySet()) {
      if (answer.getKey().startsWith("check-")) {
        assertThat(text)
            .contains("\n  " + answer.getKey() + ": {" + answer.getValue().replace(" ", ": "));
      }
    }
  }

  @Test
  void proofs_places_consequences_and_the_retest_stand_on_the_card() throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("cause").orElseThrow();
    Map<String, String> given =
        with(
            LEAD_LOOSE,
            "only-if",
            "batteries sealed open",
            "also",
            "runs-without-mains",
            "runs-without-mains",
            "fail often",
            "consequences",
            "batteries-low sometimes",
            "retest-fails",
            "40",
            "repair",
            "replace-charger");
    Map<String, String> answers = answers(card, given);
    assertThat(card.questions(answers).stream().filter(q -> q.key().equals("prior")).findFirst())
        .hasValueSatisfying(
            q -> assertThat(q.ask()).startsWith("Of a hundred faulty gates of that kind"));
    SortedMap<String, String> files = card.files(answers);
    assertThat(bench.problems(files)).isEmpty();
    assertThat(files.get("battery/charger-lead-loose.yaml"))
        .contains(
            "only-if: {batteries: [sealed, open]}\n",
            "consequences: {batteries-low: sometimes}\nretest-fails: 0.4\n",
            "  runs-without-mains: often\n");
    assertThat(files.get("battery/charger-lead-loose.case.yaml"))
        .contains("site: {batteries: sealed}\n")
        .doesNotContain("runs-without-mains");
    bench.write(files);
    RuleBase base = RuleBase.read(KnowledgeSource.folder(folder));
    assertThat(base.checks().get("runs-without-mains").likelihood().get("charger-lead-loose"))
        .containsExactly(0.35, 0.65);
  }

  @Test
  void what_checks_showed_is_divided_by_commas_as_well() throws IOException {
    NewCard card = bench().card("cause").orElseThrow();
    assertThat(looking(card, "battery-rest-voltage flat, lamp-seen lit"))
        .isEqualTo(looking(card, "battery-rest-voltage flat; lamp-seen lit"));
    assertThat(looking(card, "battery-rest-voltage [25 V, 24 V], lamp-seen lit").values())
        .anyMatch(text -> text.contains("  battery-rest-voltage: [25 V, 24 V]\n"));
  }

  private static SortedMap<String, String> looking(NewCard card, String shown) {
    return card.files(
        answers(
            card,
            with(
                LEAD_LOOSE,
                "repair",
                "replace-charger",
                "not-it",
                "batteries-low",
                "not-it-shows",
                shown)));
  }

  @Test
  void a_second_case_has_a_rare_sign_and_a_third_is_another_cause() throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("cause").orElseThrow();
    Map<String, String> given =
        with(
            LEAD_LOOSE,
            "repair",
            "replace-charger",
            "story",
            "The lamp came and went.",
            "odd-sign",
            "lamp-seen lit",
            "not-it",
            "batteries-low",
            "not-it-shows",
            "battery-rest-voltage flat; lamp-seen lit");
    SortedMap<String, String> files = card.files(answers(card, given));
    assertThat(bench.problems(files)).isEmpty();
    assertThat(files.get("battery/charger-lead-loose.case.yaml")).containsOnlyOnce("story: ");
    assertThat(files.get("battery/charger-lead-loose.case.yaml"))
        .contains(
            """
            ---
            case: charger-lead-loose-oddly-met
            person: technician
            complaints: [dead-without-mains]
            answers:
              lamp-seen: lit
              battery-rest-voltage: low
            others: usual
            truth: [charger-lead-loose]
            repairs: [replace-charger]
            ---
            case: charger-lead-loose-looked-so
            person: technician
            complaints: [dead-without-mains]
            answers:
              battery-rest-voltage: flat
              lamp-seen: lit
            others: usual
            truth: [batteries-low]
            """);
    bench.write(files);
    assertThat(new Checker().check(KnowledgeSource.folder(folder).files()).cases()).isEqualTo(3);
  }

  @Test
  void a_name_close_to_that_of_a_cause_is_said_so_at_once() throws IOException {
    NewCard card = bench().card("cause").orElseThrow();
    Question name =
        card.questions(Map.of()).stream()
            .filter(q -> q.key().equals("name"))
            .findFirst()
            .orElseThrow();
    assertThat(name.told().apply("The charger is not charging"))
        .first()
        .asString()
        .startsWith("Close to charger-dead (Charger does not charge).");
    assertThat(name.told().apply("Wingnut rusty")).isEmpty();
  }

  private List<String> adviceOnALead(Map<String, String> causes) throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("check").orElseThrow();
    Map<String, String> given =
        new HashMap<>(
            Map.of(
                "id", "lead-look",
                "ask", "How does the lead of the charger sit?",
                "area", "battery",
                "outcomes", "fast: it sits fast; loose: it moves, or comes off",
                "minutes", "2"));
    given.putAll(causes);
    Map<String, String> answers = answers(card, given);
    return bench.advice(card.files(answers), answers);
  }

  @Test
  void a_new_check_is_held_against_all_that_looks_like_its_causes() throws IOException {
    assertThat(adviceOnALead(Map.of("causes", "charger-dead", "charger-dead", "loose often")))
        .contains("It tells charger-dead from batteries-low by 57 %.");
  }

  @Test
  void a_new_check_names_what_it_tells_apart_and_counts_the_rest() throws IOException {
    assertThat(
            adviceOnALead(
                Map.of(
                    "causes", "charger-dead, batteries-low",
                    "charger-dead", "loose often",
                    "batteries-low", "fast always")))
        .anyMatch(line -> line.matches("It tells batteries-low from charger-dead by \\d\\d %.*"))
        .noneMatch(line -> line.matches(".*by \\d %.*"));
  }

  @Test
  void a_gate_that_looked_so_is_as_the_other_cause_mostly_shows_it() throws IOException {
    NewCard card = bench().card("cause").orElseThrow();
    Map<String, String> given =
        with(
            LEAD_LOOSE,
            "repair",
            "replace-charger",
            "not-it",
            "batteries-low",
            "not-it-shows",
            "lamp-seen lit");
    String cases = card.files(answers(card, given)).get("battery/charger-lead-loose.case.yaml");
    assertThat(cases.substring(cases.indexOf("looked-so")))
        .contains("  lamp-seen: lit\n", "  battery-rest-voltage: flat\n");
  }

  @Test
  void a_repair_that_is_there_may_be_followed_by_how_surely_it_helps() throws IOException {
    NewCard card = bench().card("cause").orElseThrow();
    SortedMap<String, String> files =
        card.files(answers(card, with(LEAD_LOOSE, "repair", "replace-charger often")));
    assertThat(files.get("battery/charger-lead-loose.yaml"))
        .contains("removed-by: {replace-charger: often}")
        .doesNotContain("\nrepair:");
    assertThat(files.get("battery/charger-lead-loose.case.yaml"))
        .contains("repairs: [replace-charger]");
    Question repair =
        card.questions(Map.of()).stream()
            .filter(q -> q.key().equals("repair"))
            .findFirst()
            .orElseThrow();
    assertThat(repair.complaint().apply("replace-charger oftne")).isPresent();
  }

  @Test
  void an_outcome_that_a_measured_check_does_not_have_is_answered_with_those_it_has()
      throws IOException {
    NewCard card = bench().card("cause").orElseThrow();
    Question odd =
        card.questions(Map.of()).stream()
            .filter(q -> q.key().equals("odd-sign"))
            .findFirst()
            .orElseThrow();
    assertThat(odd.complaint().apply("battery-rest-voltage ordinary"))
        .get()
        .asString()
        .contains("charged, low, flat");
    assertThat(odd.complaint().apply("battery-rest-voltage low")).isEmpty();
  }

  @Test
  void complaints_are_asked_for_beside_those_of_the_look_alikes() throws IOException {
    NewCard card = bench().card("cause").orElseThrow();
    assertThat(
            card.questions(Map.of("like", "charger-dead, batteries-low")).stream()
                .filter(q -> q.key().equals("complaints"))
                .findFirst()
                .orElseThrow()
                .before())
        .first()
        .isEqualTo("Of those people say:");
  }

  @Test
  void every_check_that_the_closing_remark_could_name_was_asked_about() throws IOException {
    // More look-alikes than checks are asked about at first, each shown by a check of its own.
    StringBuilder more = new StringBuilder();
    StringBuilder like = new StringBuilder();
    for (int i = 0; i < 10; i++) {
      more.append(
          """
          cause: cause-%d
          name: Cause %d
          prior: 0.01
          removed-by: {charge-batteries: 0.5}
          source: considered judgement
          ---
          check: check-%d
          ask: What is it like?
          minutes: 1
          who: caller
          outcomes: {so: as usual, odd: not as usual}
          likelihood: {cause-%d: {so: 0.1, odd: 0.9}}
          otherwise: {so: 0.9, odd: 0.1}
          source: considered judgement
          ---
          """
              .formatted(i, i, i, i));
      like.append(i == 0 ? "" : ", ").append("cause-").append(i);
    }
    Files.writeString(folder.resolve("more.yaml"), more);
    NewFiles bench = bench();
    NewCard card = bench.card("cause").orElseThrow();
    Map<String, String> answers =
        answers(
            card,
            with(
                LEAD_LOOSE,
                "like",
                like.toString(),
                "repair",
                "replace-charger",
                "check-3",
                "odd 0.8"));
    SortedMap<String, String> files = card.files(answers);
    List<String> advice = bench.advice(files, answers);
    assertThat(advice)
        .hasSize(10)
        .contains("No check tells it well apart from cause-3. A check of its own would.");
    for (String sentence : advice.stream().filter(a -> a.startsWith("Best told apart ")).toList()) {
      String check = sentence.replaceFirst(".* by (\\S+) .*", "$1");
      assertThat(answers).as(sentence).containsKey(check);
    }
    assertThat(files.get("battery/charger-lead-loose.yaml"))
        .contains("  check-3: {odd: 0.8, so: 0.200}\n")
        .contains("  # check-9: nothing said, so as on a sound gate\n");
    assertThat(bench.problems(files)).isEmpty();
  }

  @Test
  void a_repair_without_a_proof_is_remarked_on() throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("cause").orElseThrow();
    Map<String, String> answers =
        answers(card, with(LEAD_LOOSE, "repair-minutes", "10", "repair-steps", "Fasten it."));
    assertThat(bench.advice(card.files(answers), answers))
        .filteredOn(a -> a.startsWith("Repair mend-charger-lead-loose: this repair names no proof"))
        .hasSize(1);
    Map<String, String> proved = with(answers, "repair-proofs", "runs-without-mains");
    assertThat(bench.advice(card.files(proved), proved)).noneMatch(a -> a.startsWith("Repair"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"cause", "effect", "check", "repair", "case"})
  void the_outline_names_every_question(String kind) throws IOException {
    NewCard card = bench().card(kind).orElseThrow();
    Map<String, String> given =
        with(
            LEAD_LOOSE,
            "ask",
            "Is it so?",
            "outcomes",
            "a: a; b: b",
            "causes",
            "charger-dead",
            "charger-dead",
            "b",
            "otherwise",
            "a",
            "also",
            "lamp-asked",
            "checks",
            "lamp-asked",
            "lamp-asked",
            "dark",
            "removes",
            "charger-dead",
            "repair-minutes",
            "1",
            "minutes",
            "1");
    if (kind.equals("case")) {
      given.put("complaints", "dead-without-mains");
    }
    List<String> outlined = Lists.keys(card.outline());
    assertThat(outlined).doesNotHaveDuplicates();
    for (String key : answers(card, given).keySet()) {
      assertThat(outlined)
          .contains(
              key.equals("lamp-asked") || key.endsWith("-voltage") || key.equals("lamp-seen")
                  ? "CHECK"
                  : key.equals("charger-dead") ? "CAUSE" : key);
    }
  }

  private NewFiles benchWithEffects() throws IOException {
    for (Map.Entry<String, String> file : WithEffects.files().entrySet()) {
      Files.writeString(folder.resolve(file.getKey()), file.getValue());
    }
    SortedMap<String, String> files = KnowledgeSource.folder(folder).files();
    return new NewFiles(folder, files, files);
  }

  @Test
  void a_cause_that_leads_to_effects_is_asked_for_its_own_marks_only() throws IOException {
    NewFiles bench = benchWithEffects();
    NewCard card = bench.card("cause").orElseThrow();
    Map<String, String> given =
        with(
            LEAD_LOOSE,
            "id",
            "post-leans",
            "name",
            "Post leans in",
            "area",
            "leaf",
            "leads-to",
            "1 always, leaf-shakes sometimes",
            "like",
            "rollers-worn, track-dirty",
            "complaints",
            "noisy often",
            "also",
            "leaf-look",
            "leaf-look",
            "shakes usually",
            "repair",
            "tighten-chain");
    Map<String, String> answers = answers(card, given);
    // Neither the current nor the look at rollers and track, on which the look-alikes show.
    assertThat(answers.keySet())
        .filteredOn(key -> key.matches(".*-(look|current|touch)"))
        .containsExactly("leaf-look");
    assertThat(card.questions(answers).stream().filter(q -> q.key().equals("also")).findFirst())
        .hasValueSatisfying(
            q ->
                assertThat(q.before())
                    .containsExactly(
                        "Told apart from rollers-worn so far by roller-look (87 %), if it shows there as a"
                            + " sound gate does.",
                        "Told apart from track-dirty so far by track-look (80 %), if it shows there as a"
                            + " sound gate does."));

    SortedMap<String, String> files = card.files(answers);
    assertThat(bench.problems(files)).isEmpty();
    assertThat(files.get("leaf/post-leans.yaml"))
        .contains("prior: 0.004\nleads-to: {more-force: always, leaf-shakes: sometimes}\nshows:\n")
        .contains("  #   by its effects: quiet 0.80, shakes 0.20\n  leaf-look: {shakes: usually}\n")
        .doesNotContain("running-current", "slow");
    // Of what its effects show, what is likelier than not; so that the case is not an ordinary
    // gate.
    assertThat(files.get("leaf/post-leans.case.yaml"))
        .contains("complaints: [noisy]\n")
        .contains("answers:\n  running-current: high\n  leaf-look: shakes\n");
    // Nobody says anything more often than not: the likeliest stands in the case.
    Map<String, String> quiet = with(answers, "complaints", "");
    assertThat(card.files(quiet).get("leaf/post-leans.case.yaml")).contains("complaints: [slow]\n");
    bench.write(files);
    RuleBase base = RuleBase.read(KnowledgeSource.folder(folder));
    assertThat(base.checks().get("running-current").likelihood()).containsKey("post-leans");
  }

  @Test
  void an_effect_is_written_before_anything_leads_to_it() throws IOException {
    NewFiles bench = benchWithEffects();
    NewCard card = bench.card("effect").orElseThrow();
    Map<String, String> given =
        Map.of(
            "id", "leaf-jumps",
            "name", "The leaf jumps when it starts",
            "area", "leaf",
            "complaints", "noisy sometimes",
            "checks", "leaf-look",
            "leaf-look", "shakes often",
            "leads-to", "leaf-shakes rarely");
    SortedMap<String, String> files = card.files(answers(card, given));
    assertThat(files.get("leaf/leaf-jumps.yaml"))
        .isEqualTo(
            """
            effect: leaf-jumps
            name: The leaf jumps when it starts
            area: leaf
            shows:
              noisy: sometimes
              leaf-look: {shakes: often}
            leads-to: {leaf-shakes: rarely}
            source: considered judgement
            """);
    assertThat(bench.problems(files)).isEmpty();
    assertThat(bench.advice(files, given))
        .singleElement()
        .asString()
        .startsWith("Nothing leads to leaf-jumps yet");
    bench.write(files);

    SortedMap<String, String> all = KnowledgeSource.folder(folder).files();
    assertThat(new Checker().check(all).problems())
        .extracting(p -> p.kind())
        .containsExactly("no-cause");
    NewFiles after = new NewFiles(folder, all, all);
    NewCard cause = after.card("cause").orElseThrow();
    Map<String, String> answers =
        answers(
            cause,
            with(
                LEAD_LOOSE,
                "area",
                "leaf",
                "like",
                "",
                "complaints",
                "",
                "leads-to",
                "leaf-jumps",
                "repair",
                "tighten-chain"));
    SortedMap<String, String> card2 = cause.files(answers);
    assertThat(card2.get("leaf/charger-lead-loose.yaml"))
        .contains("leads-to: {leaf-jumps: nearly always}\n");
    assertThat(after.problems(card2)).isEmpty();
    after.write(card2);
    assertThat(new Checker().check(KnowledgeSource.folder(folder).files()).problems()).isEmpty();
  }

  @Test
  void a_cause_without_a_check_is_told_so() throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("cause").orElseThrow();
    Map<String, String> given =
        Map.of(
            "id",
            "fuse-tired",
            "name",
            "Fuse tired",
            "area",
            "battery",
            "repair",
            "replace-charger");
    Map<String, String> answers = answers(card, given);
    assertThat(bench.advice(card.files(answers), answers))
        .containsExactly(
            "No check finds fuse-tired yet. Write one that does: knowledge new check.");
  }

  @Test
  void a_check_may_be_measured() throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card("check").orElseThrow();
    Map<String, String> given =
        Map.of(
            "id", "start-delay",
            "ask", "How long after a command does the leaf move?",
            "area", "battery",
            "measures", "time s stopwatch",
            "outcomes", "usual: below 6 s; long: above 6 s",
            "causes", "charger-dead",
            "charger-dead", "long rarely",
            "minutes", "2");
    SortedMap<String, String> files = card.files(answers(card, given));
    assertThat(bench.problems(files)).isEmpty();
    assertThat(files.get("battery/start-delay.yaml"))
        .contains("measures: {quantity: time, unit: s, instrument: stopwatch}\nbands:\n");
    Map<String, String> gap =
        with(answers(card, given), "outcomes", "usual: below 6 s; long: above 7 s");
    assertThat(bench.problems(card.files(gap))).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "repair", "case"})
  void the_other_kinds_are_written_and_sound(String kind) throws IOException {
    NewFiles bench = bench();
    NewCard card = bench.card(kind).orElseThrow();
    Map<String, String> given =
        switch (kind) {
          case "check" ->
              Map.of(
                  "id", "lead-look",
                  "ask", "How does the lead of the charger sit?",
                  "area", "battery",
                  "outcomes", "fast: it sits fast; loose: it moves, or comes off",
                  "causes", "charger-dead",
                  "charger-dead", "loose rarely",
                  "minutes", "2",
                  "needs", "cover-off");
          case "repair" ->
              Map.of(
                  "id", "new-lead",
                  "name", "Fit a new lead",
                  "area", "battery",
                  "removes", "charger-dead sometimes, batteries-low 0.1",
                  "minutes", "20",
                  "steps", "Take off the old one.; Fit the new one.");
          default ->
              Map.of(
                  "id", "lead-of-the-ferry-gate",
                  "area", "battery",
                  "story", "The Ferry gate stood in the morning: nothing was lit.",
                  "truth", "charger-dead",
                  "answers", "lamp-seen dark; battery-rest-voltage 23.1 V",
                  "repairs", "replace-charger");
        };
    SortedMap<String, String> files = card.files(answers(card, given));
    assertThat(bench.problems(files)).isEmpty();
    bench.write(files);
    assertThat(new Checker().check(KnowledgeSource.folder(folder).files()).problems()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "cause; id; Chain Slack; \"Chain Slack\" cannot be an id: write lower-case words",
        "cause; id; ../../etc/passwd; cannot be an id",
        "cause; id; charger-dead; There is a cause \"charger-dead\" already",
        "cause; area; a/b; cannot be an id",
        "cause; after; thunderstrom 3; There is no history \"thunderstrom\". Maybe \"thunderstorm\".",
        "cause; after; thunderstorm; Write after it how many times likelier, such as:"
            + " thunderstorm 3.",
        "cause; after; thunderstorm often; Write after it how many times likelier",
        "cause; area; batery; There is no area \"batery\" yet. Maybe \"battery\".",
        "cause; area; docks; To begin one, write: new docks.",
        "cause; area; new a/b; cannot be an id",
        "cause; prior; 0; \"0\" cannot be used: write a number from 0.01 to 90.",
        "check; minutes; ''; Write a number from 0 to 240.",
        "cause; prior; many; \"many\" cannot be used",
        "cause; only-if; batteris agm; There is no site question \"batteris\". Maybe \"batteries\".",
        "cause; only-if; batteries lithum; There is no answer to batteries that is \"lithum\".",
        "cause; only-if; batteries; Write after it which answers",
        "cause; consequences; batteries-lo often; Maybe \"batteries-low\"",
        "cause; retest-fails; mostly; \"mostly\" cannot be used",
        "cause; like; charger-ded; There is no cause \"charger-ded\". Maybe \"charger-dead\"",
        "cause; complaints; dead-without-mains offen; \"offen\" is not a probability",
        "cause; battery-rest-voltage; empty usually; There is no outcome \"empty\". Known: charged,",
        "cause; battery-rest-voltage; low 0.5, flat 0.6; These come to 1.10 in all; together they should come to 1.",
        "cause; battery-rest-voltage; low 0.1, flat 0.1, charged 0.1; These come to 0.30 in all",
        "cause; battery-rest-voltage; low always, flat always; These come to 1.98 in all",
        "cause; name; ' '; Write a few words.",
        "cause; leads-to; 9; There is no effect 9: there are 2.",
        "cause; leads-to; supply-sgas always; There is no effect \"supply-sgas\". Maybe \"supply-sags\".",
        "cause; leads-to; supply-sags mostly; \"mostly\" is not a probability",
        "effect; id; supply-sags; There is an effect",
        "cause; repair; replace-chargr; There is no repair \"replace-chargr\". Maybe \"replace-charger\".",
        "cause; also; dead-without-mains; \"dead-without-mains\" is a complaint: say it where",
        "check; measures; time V stopwatch; \"V\" is not a unit of time.",
        "check; measures; time s stopwach; Maybe \"stopwatch\"",
        "check; measures; tim s stopwatch; unknown quantity",
        "check; outcomes; lit: it is lit; at least two answers",
        "repair; removes; ''; Name at least one cause.",
        "case; answers; lamp-seen drak; \"drak\" is not an outcome of lamp-seen. Maybe \"dark\".",
        "case; answers; battery-rest-voltage 5 kg; battery-rest-voltage: \"kg\" is a mass",
        "case; answers; lamp-sen dark; Maybe \"lamp-seen\"",
        "case; person; neighbour; \"neighbour\" is not known here"
      })
  void a_wrong_answer_is_refused_with_clear_words(
      String kind, String key, String answer, String words) throws IOException {
    NewCard card = bench().card(kind).orElseThrow();
    Question question =
        card.questions(Map.of("like", "charger-dead")).stream()
            .filter(q -> q.key().equals(key))
            .findFirst()
            .orElseThrow();
    assertThat(question.complaint().apply(answer))
        .hasValueSatisfying(c -> assertThat(c).contains(words));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "charged: above 24 V; low: 20 V to 24 V; dead: below 5 V | The bands leave a gap or overlap.",
        "charged: above 24 V; low: under 24 V | \"under 24 V\" is not a band",
        "charged: above 24 kg; low: below 24 V | \"kg\" is a mass",
        "charged: above 24 V; low: below 24 V |"
      })
  void bands_that_leave_a_gap_are_refused_where_they_are_asked_for(String bands, String words)
      throws IOException {
    NewCard card = bench().card("check").orElseThrow();
    Question question =
        card.questions(Map.of("measures", "voltage V meter-dc-volts")).stream()
            .filter(q -> q.key().equals("outcomes"))
            .findFirst()
            .orElseThrow();
    assertThat(question.complaint().apply(bands).orElse("")).contains(words == null ? "" : words);
    assertThat(question.complaint().apply(bands).isEmpty()).isEqualTo(words == null);
  }

  @Test
  void steps_are_written_as_sentences_and_a_single_one_is_remarked_on() throws IOException {
    NewCard card = bench().card("cause").orElseThrow();
    Map<String, String> given =
        with(
            LEAD_LOOSE,
            "repair-minutes",
            "10",
            "repair-steps",
            "lock off the operator; fasten the lead.");
    assertThat(card.files(answers(card, given)).get("battery/charger-lead-loose.yaml"))
        .contains("  - Lock off the operator.\n  - Fasten the lead.\n");
    Question steps =
        card.questions(answers(card, given)).stream()
            .filter(q -> q.key().equals("repair-steps"))
            .findFirst()
            .orElseThrow();
    assertThat(steps.told().apply("Lock off the operator."))
        .containsExactly("This is one step. More go on the same line, divided by semicolons.");
    assertThat(steps.told().apply("Lock it off; mend it")).isEmpty();
  }

  @Test
  void a_card_of_an_add_on_knows_the_rule_base_that_it_lies_over() throws IOException {
    Files.writeString(folder.resolve("add-on.yaml"), "add-on: quay\nname: Quay\n");
    SortedMap<String, String> all =
        KnowledgeSource.layered(KnowledgeSource.folder(CARDS), List.of(folder)).files();
    NewFiles bench = new NewFiles(folder, all, KnowledgeSource.folder(folder).files());
    NewCard card = bench.card("cause").orElseThrow();
    SortedMap<String, String> files =
        card.files(answers(card, with(LEAD_LOOSE, "repair", "replace-charger")));
    assertThat(bench.problems(files)).isEmpty();
    files.compute("battery/charger-lead-loose.yaml", (n, t) -> t.replace("lamp-seen", "lamp-sen"));
    assertThat(bench.problems(files))
        .extracting(p -> p.file().substring(folder.toString().length()))
        .containsExactly("/battery/charger-lead-loose.yaml");
  }

  @Test
  void nothing_is_overwritten_and_nothing_half_written() throws IOException {
    NewFiles bench = bench();
    Path there = folder.resolve("battery/b.yaml");
    Files.createDirectories(there.getParent());
    Files.writeString(there, "mine");
    assertThatThrownBy(() -> bench.write(Map.of("battery/a.yaml", "a", "battery/b.yaml", "b")))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("b.yaml already; nothing was written");
    assertThat(there).hasContent("mine");
    assertThat(folder.resolve("battery/a.yaml")).doesNotExist();
  }

  @Test
  void nothing_is_written_through_a_link(@TempDir Path elsewhere) throws IOException {
    Path own = Files.writeString(elsewhere.resolve("profile"), "mine");
    Files.createSymbolicLink(folder.resolve(".new-cause.draft"), own);
    Files.createSymbolicLink(folder.resolve("linked"), elsewhere);

    assertThatThrownBy(() -> new Draft(folder, "cause").keep(Map.of("id", "x")))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("it is a link");
    assertThatThrownBy(() -> bench().write(Map.of("linked/x.yaml", "cause: x\n")))
        .isInstanceOf(UncheckedIOException.class)
        .hasMessageContaining("leads out of the folder");
    assertThat(elsewhere.resolve("x.yaml")).doesNotExist();
    assertThat(own).hasContent("mine");
  }
}
