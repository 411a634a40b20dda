package yett.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import org.junit.jupiter.api.Test;
import yett.replay.Replayed.Mended;
import yett.replay.Replayed.Proved;
import yett.replay.Replayed.SiteAnswer;
import yett.replay.Replayed.Taken;
import yett.testing.Shipped;

class ReplayerTest {
  @Test
  void a_case_runs_from_the_dangers_to_the_closing() {
    Replayed slack =
        run(
            """
            case: slack
            person: technician
            site: {opening: 6 m}
            complaints: [noisy-chain, does-nothing]
            answers:
              danger-person: nobody
              display-lit: steady
              noise-kind: slap
              held-open: not-meant
              chain-sag: [190 mm, 84 mm]
              battery-rest-voltage: 25.9 V
              charging-voltage: 27.4 V
            truth: [chain-slack]
            repairs: [tighten-chain]
            """);
    assertThat(slack.ended()).isEqualTo("repaired");
    assertThat(slack.because()).isEqualTo("every proof passed");
    assertThat(slack.steps())
        .extracting(Taken::kind)
        .startsWith("danger", "site", "complaints", "history")
        .containsSubsequence("repair", "retest", "proof", "leave", "close");
    assertThat(slack.ranking().get(0).cause()).isEqualTo("chain-slack");
    assertThat(slack.repairs()).contains(new Mended("tighten-chain", Optional.of(true)));
    assertThat(slack.proofs()).containsExactly(new Proved("limits-hold", "pass"));
    assertThat(slack.site())
        .containsExactly(
            new SiteAnswer("opening", "6 m", false), new SiteAnswer("batteries", "agm", true));
    assertThat(slack.judged().cause()).contains(true);
    assertThat(slack.judged().repairs()).contains(true);
    assertThat(slack.judged().stop()).isEmpty();
  }

  @Test
  void every_step_says_why_what_it_meant_and_where_it_left_the_belief() {
    Replayed slack = run(SLACK_THAT_IS_MEASURED);
    Taken first =
        slack.steps().stream().filter(s -> s.kind().equals("check")).findFirst().orElseThrow();
    assertThat(first.why().saves()).hasValueSatisfying(saves -> assertThat(saves).isPositive());
    assertThat(first.why().next()).isPresent();
    assertThat(first.why().words()).matches("saves .* minutes on average .*would save.*");
    Taken rest = step(slack, "battery-rest-voltage");
    assertThat(rest.asked()).startsWith("What is the voltage across the two batteries");
    assertThat(rest.answer()).isEqualTo("25.9 V");
    assertThat(rest.meaning().orElseThrow().outcome()).isEqualTo("charged");
    assertThat(rest.meaning().orElseThrow().words()).isEqualTo("above 25.2 V");
    assertThat(rest.belief()).doesNotContainValue(0.0);
    assertThat(rest.belief().keySet()).first().isEqualTo("mains-missing");
    assertThat(rest.minutes()).isEqualTo(3);
    Taken repair = step(slack, "tighten-chain");
    assertThat(repair.why().plan()).first().isEqualTo("tighten-chain");
  }

  @Test
  void what_is_left_out_for_speed_changes_no_figure() {
    CaseFile file = CaseFile.read(Path.of("knowledge/chain/two-faults.case.yaml"), Shipped.BASE);
    RecordedCase two = file.cases().get(0);
    Replayed whole = new Replayer(Shipped.EXPERTISE).run(two);
    Replayed quick = new Replayer(Shipped.EXPERTISE).withoutBeliefs().run(two);
    assertThat(quick.steps()).isNotEmpty().extracting(Taken::belief).allMatch(Map::isEmpty);
    assertThat(quick.steps())
        .usingRecursiveComparison()
        .ignoringFields("belief")
        .isEqualTo(whole.steps());
    assertThat(quick.moment().belief().atCallOut()).isEqualTo(whole.moment().belief().atCallOut());
    assertThat(quick.moment().trail()).usingRecursiveComparison().isEqualTo(whole.moment().trail());
    assertThat(quick.found()).isEqualTo(whole.found());
    assertThat(quick.end()).isEqualTo(whole.end());
  }

  @Test
  void minutes_spent_are_those_of_the_cards_and_the_changes_of_set_up() {
    Replayed slack = run(SLACK_THAT_IS_MEASURED);
    double sum = slack.steps().stream().mapToDouble(Taken::minutes).sum();
    assertThat(slack.spentMinutes()).isCloseTo(sum, within(0.05));
    assertThat(slack.steps().stream().filter(s -> s.kind().equals("enter")))
        .isNotEmpty()
        .allSatisfy(s -> assertThat(s.minutes()).isPositive());
    assertThat(slack.expectedMinutes()).isPositive();
  }

  @Test
  void a_stop_ends_the_case_at_once() {
    Replayed trapped =
        run(
            """
            case: trapped
            person: caller
            answers: {danger-person: hurt-or-trapped}
            truth: [chain-slack]
            stop: person-trapped
            """);
    assertThat(trapped.ended()).isEqualTo("made-safe");
    assertThat(trapped.stops()).containsExactly("person-trapped");
    assertThat(trapped.steps())
        .extracting(Taken::kind)
        .containsExactly("danger", "make-safe", "close");
    assertThat(trapped.judged().stop()).contains(true);
    assertThat(trapped.judged().cause()).isEmpty();
  }

  private static final String SOMEBODY_WAS_CAUGHT =
      """
      case: caught-and-free
      person: technician
      site: {opening: 6 m}
      complaints: [noisy-chain]
      answers:
        danger-person: [hurt-or-trapped, nobody]
        display-lit: steady
        noise-kind: slap
        held-open: not-meant
        chain-sag: [190 mm, 84 mm]
        battery-rest-voltage: 25.9 V
        charging-voltage: 27.4 V
      truth: [chain-slack]
      repairs: [tighten-chain]
      stop: person-trapped
      """;

  /** As the small rule base is, but for a stop after which a technician goes on, locked off. */
  private static void goingOn(SortedMap<String, String> files) {
    files.computeIfPresent(
        "work.yaml",
        (name, cards) ->
            cards.replace(
                "name: Somebody is struck or trapped\n",
                "name: Somebody is struck or trapped\nleaves: locked-off\ngoes-on: technician\n"));
    files.computeIfPresent(
        "small.drl",
        (name, rules) ->
            rules
                .replace(
                    "outcome == \"hurt-or-trapped\")",
                    "outcome == \"hurt-or-trapped\", $at : event)\n"
                        + "  not Given(check == \"danger-person\", event > $at)")
                .replace("\"person-trapped\", because", "\"person-trapped\", $at, because"));
  }

  @Test
  void whoever_may_go_on_after_a_stop_finds_the_fault_and_looks_for_the_danger_again() {
    Replayed caught =
        new Replayer(SmallRuleBase.changed(ReplayerTest::goingOn)).run(read(SOMEBODY_WAS_CAUGHT));
    assertThat(caught.stops()).containsExactly("person-trapped");
    assertThat(caught.judged().stop()).contains(true);
    assertThat(caught.steps())
        .extracting(Taken::kind)
        .startsWith("danger", "make-safe", "site")
        .containsSubsequence("make-safe", "repair", "danger", "retest", "proof", "close");
    assertThat(caught.ended()).isEqualTo("repaired");
    assertThat(caught.ranking().get(0).cause()).isEqualTo("chain-slack");
    assertThat(caught.unsafe()).isEmpty();
  }

  @Test
  void work_that_the_state_of_a_gate_excludes_counts_as_unsafe() {
    Replayed loose =
        new Replayer(
                SmallRuleBase.changed(
                    files -> {
                      goingOn(files);
                      files.computeIfPresent(
                          "rules/core.drl",
                          (name, rules) ->
                              rules.replace(
                                  "StopNow($stop : stop",
                                  "StopNow(stop == \"none\", $stop : stop"));
                    }))
            .run(
                read(
                    """
                    case: caught-and-flat
                    person: technician
                    complaints: [does-nothing]
                    answers:
                      danger-person: [hurt-or-trapped, nobody]
                      battery-rest-voltage: 22.1 V
                      charging-voltage: 27.4 V
                    truth: [batteries-low]
                    """));
    assertThat(loose.unsafe()).anyMatch(w -> w.contains("locked-off"));
  }

  @Test
  void a_danger_that_the_file_leaves_open_is_taken_as_ordinary_and_noted() {
    Replayed silent = run("case: silent\nperson: caller\n");
    assertThat(step(silent, "danger-person").answer()).isEqualTo("nobody");
    assertThat(step(silent, "danger-person").assumed()).isTrue();
    assertThat(silent.notes())
        .contains("the file does not answer \"danger-person\": taken as \"nobody\"");
  }

  @Test
  void a_gate_with_nothing_wrong_is_explained_and_proved() {
    Replayed fine =
        run(
            """
            case: held-by-timer
            person: technician
            complaints: [stays-open]
            answers:
              danger-person: nobody
              display-lit: steady
              held-open: meant
              noise-kind: usual
              chain-sag: 60 mm
              battery-rest-voltage: 25.9 V
              charging-voltage: 27.4 V
            truth: [nothing-wrong]
            repairs: [explain-use]
            """);
    assertThat(fine.ended()).isEqualTo("nothing-found");
    assertThat(fine.ranking().get(0).cause()).isEqualTo("nothing-wrong");
    assertThat(fine.repairs()).containsExactly(new Mended("explain-use", Optional.of(true)));
    assertThat(fine.judged().needless()).isEmpty();
  }

  @Test
  void a_repair_that_did_not_cure_is_followed_by_one_that_does() {
    Replayed two =
        run(
            """
            case: two-faults
            person: technician
            complaints: [does-nothing, noisy-chain]
            answers:
              danger-person: nobody
              noise-kind: slap
              display-lit: dark
              held-open: not-meant
              chain-sag: [170 mm, 64 mm]
              battery-rest-voltage: [22.9 V, 25.6 V]
              charging-voltage: [24.1 V, 27.4 V]
            truth: [batteries-low, chain-slack, charger-dead]
            repairs: [replace-charger, charge-batteries, tighten-chain]
            """);
    assertThat(two.repairs())
        .extracting(Mended::cured)
        .startsWith(Optional.of(false))
        .contains(Optional.of(true));
    assertThat(two.ended()).isEqualTo("repaired");
    assertThat(two.judged().repairs()).contains(true);
  }

  @Test
  void what_a_repair_changed_is_not_told_again() {
    Replayed two =
        run(
            """
            case: stale
            person: technician
            complaints: [does-nothing]
            answers:
              danger-person: nobody
              held-open: not-meant
              battery-rest-voltage: 22.9 V
              charging-voltage: 24.1 V
            truth: [batteries-low, charger-dead, mains-missing]
            """);
    List<Taken> voltages =
        two.steps().stream().filter(s -> s.id().equals("battery-rest-voltage")).toList();
    assertThat(voltages).extracting(Taken::answer).containsExactly("22.9 V", "charged");
  }

  @Test
  void a_caller_is_asked_only_what_a_caller_may_do_and_the_case_is_handed_over() {
    Replayed call =
        run(
            """
            case: dark-display
            person: caller
            complaints: [does-nothing]
            answers:
              danger-person: nobody
              display-lit: dark
              noise-kind: usual
              held-open: not-meant
              battery-rest-voltage: 22.9 V
            truth: [mains-missing]
            """);
    assertThat(call.ended()).isEqualTo("handed-over");
    assertThat(call.because()).contains("the caller may do");
    assertThat(call.steps())
        .extracting(Taken::id)
        .doesNotContain("battery-rest-voltage", "chain-sag", "restore-mains");
    assertThat(call.repairs()).isEmpty();
  }

  @Test
  void what_a_callers_first_words_tell_is_not_asked() {
    Replayed call =
        run(
            """
            case: dark-display
            person: caller
            complaints: [does-nothing]
            said: "It is dead, the little lamp is out as well"
            told: display-lit
            answers: {danger-person: nobody, display-lit: dark}
            """);
    assertThat(step(call, "display-lit").kind()).isEqualTo("told");
    assertThat(call.steps())
        .filteredOn(s -> s.kind().equals("check"))
        .extracting(Taken::id)
        .doesNotContain("display-lit");
  }

  @Test
  void a_failing_retest_in_the_file_overrules_the_truth() {
    Replayed told =
        run(
            """
            case: overruled
            person: technician
            complaints: [noisy-chain]
            answers: {danger-person: nobody, retest: fails}
            truth: [chain-slack]
            """);
    assertThat(told.repairs()).extracting(Mended::cured).containsOnly(Optional.of(false));
    assertThat(told.ended()).isEqualTo("handed-over");
  }

  @Test
  void without_truth_the_file_says_whether_the_gate_runs() {
    String told =
        """
        case: told
        person: technician
        complaints: [noisy-chain]
        answers: {danger-person: nobody, retest: %s, limits-hold: pass}
        """;
    assertThat(run(told.formatted("cured")).repairs())
        .first()
        .isEqualTo(new Mended("tighten-chain", Optional.of(true)));
    assertThat(run(told.formatted("[fails, cured]")).repairs())
        .extracting(Mended::cured)
        .startsWith(Optional.of(false), Optional.of(true));
  }

  @Test
  void without_truth_and_retest_the_case_is_handed_over_when_the_gate_is_tried() {
    Replayed open =
        run(
            """
            case: open
            person: technician
            complaints: [noisy-chain]
            answers: {danger-person: nobody}
            """);
    assertThat(open.ended()).isEqualTo("handed-over");
    assertThat(open.because())
        .isEqualTo("the file does not say whether the gate runs after the repair");
    assertThat(open.repairs()).containsExactly(new Mended("tighten-chain", Optional.empty()));
    assertThat(open.moment().state().work().setUps()).isEmpty();
  }

  @Test
  void a_proof_that_the_file_leaves_open_keeps_the_gate_out_of_service() {
    Replayed open =
        run(
            """
            case: unproved
            person: technician
            complaints: [noisy-chain]
            answers: {danger-person: nobody, retest: cured}
            """);
    assertThat(open.proofs()).containsExactly(new Proved("limits-hold", "cannot-tell"));
    assertThat(open.ended()).isEqualTo("out-of-service");
  }

  @Test
  void a_failed_proof_reopens_the_case() {
    Replayed failed =
        run(
            """
            case: failed-proof
            person: technician
            complaints: [noisy-chain]
            answers: {danger-person: nobody, limits-hold: [fail, pass]}
            truth: [chain-slack]
            """);
    assertThat(failed.proofs()).first().isEqualTo(new Proved("limits-hold", "fail"));
    assertThat(failed.steps()).extracting(Taken::kind).contains("failed-proof");
    assertThat(failed.ended()).isNotEqualTo("unfinished");
  }

  @Test
  void contradicting_answers_are_both_kept_and_noted() {
    Replayed odd =
        run(
            """
            case: odd
            person: technician
            complaints: [does-nothing, noisy-chain]
            answers:
              danger-person: nobody
              display-lit: dark
              noise-kind: slap
              held-open: not-meant
              battery-rest-voltage: 22.9 V
            truth: [mains-missing]
            """);
    assertThat(odd.steps()).extracting(Taken::kind).contains("settle");
    assertThat(odd.contradictions()).hasSize(1);
    assertThat(odd.contradictions().get(0).because())
        .contains("a gate without supply does not run");
    assertThat(odd.notes())
        .anySatisfy(n -> assertThat(n).endsWith("contradict each other; both kept"));
  }

  @Test
  void what_the_rules_remark_is_in_the_result() {
    Replayed mains = run("case: mains\nperson: caller\nsite: {batteries: none}\n");
    assertThat(mains.remarks())
        .containsExactly("This gate has no batteries: it stops whenever the mains does.");
  }

  @Test
  void the_run_is_judged_by_what_the_file_says_is_right() {
    Replayed wrong =
        run(
            """
            case: wrong
            person: technician
            complaints: [noisy-chain]
            answers: {danger-person: nobody, retest: cured, limits-hold: pass}
            expect: charger-dead
            repairs: [replace-charger]
            stop: person-trapped
            """);
    assertThat(wrong.judged().cause()).contains(false);
    assertThat(wrong.judged().repairs()).contains(false);
    assertThat(wrong.judged().needless()).contains("tighten-chain");
    assertThat(wrong.judged().stop()).contains(false);
  }

  static final String SLACK_THAT_IS_MEASURED =
      """
      case: measured
      person: technician
      site: {opening: 6 m}
      complaints: [does-nothing]
      answers:
        danger-person: nobody
        display-lit: steady
        noise-kind: cannot tell
        held-open: not-meant
        chain-sag: [190 mm, 84 mm]
        battery-rest-voltage: 25.9 V
        charging-voltage: 27.4 V
      truth: [chain-slack]
      repairs: [tighten-chain]
      """;

  private static Taken step(Replayed replayed, String id) {
    return replayed.steps().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  static Replayed run(String text) {
    return new Replayer(SmallRuleBase.expertise()).run(read(text));
  }

  private static RecordedCase read(String text) {
    CaseFile file = CaseFile.read("quay.case.yaml", text, SmallRuleBase.base());
    assertThat(file.problems()).isEmpty();
    return file.cases().get(0);
  }
}
