package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

/** What cards say about power and runs: people and barriers first, then power, then a run. */
class PowerOnCardsTest {
  private static final RuleBase BASE = Shipped.BASE;

  private static final Pattern CONNECTS =
      Pattern.compile(
          "(?i)\\b(re)?connect (them, plus|the batteries|plus first)|plus (lead )?first|minus (lead )?(on|last)"
              + "|uncover the panel|switch (the|it|them) .*on\\b");

  private static final Pattern RUNS =
      Pattern.compile(
          "(?i)press once|open(s|ed)? (it |this one |once)|close (it )?once|run (it|twice|the gate)"
              + "|try it\\b|try each button|drive (on|past|onto)|teach (the )?limits");

  /** What comes later, in a state of its own, or with the gate held. */
  private static final Pattern LATER =
      Pattern.compile(
          "(?i)once (the power is back|it has power)|on the first runs?|first start"
              + "|lock-off ends|hold the gate with its stop|held by its stop"
              + "|before you (connect|switch)|is switched on|again$");

  private static Stream<String> sentences(Repair repair) {
    return repair.steps().stream().flatMap(s -> Stream.of(s.split("(?<=[.;])\\s+")));
  }

  /** Leaving the lock-off puts the guards on and people out of reach before it gives power back. */
  @Test
  void no_repair_connects_a_supply_while_it_is_locked_off() {
    for (Repair repair : BASE.repairs().values()) {
      if (repair.needs().contains(SetUp.LOCKED_OFF)) {
        repair.steps().stream()
            .filter(s -> !LATER.matcher(s).find())
            .forEach(
                s -> assertThat(CONNECTS.matcher(s).find()).as("%s: %s", repair.id(), s).isFalse());
      }
    }
    for (String id :
        List.of(
            "replace-batteries", "charge-batteries", "charge-blocks-singly", "clean-terminals")) {
      assertThat(String.join(" ", BASE.repairs().get(id).steps()))
          .as(id)
          .contains("minus lead")
          .matches("(?s).*(until|when) the lock-off ends.*");
    }
  }

  /** Never at the ends of a leaf that has power: so the cautions say. */
  @Test
  void nobody_holds_a_meter_between_leaf_and_post() {
    List<Check> forces =
        BASE.checks().values().stream()
            .filter(c -> c.needs().contains(SetUp.GATE_RUNNING))
            .filter(c -> c.how().contains("orce meter"))
            .toList();
    assertThat(forces).extracting(Check::id).contains("obstruction-force", "reversal-closing");
    for (Check check : forces) {
      assertThat(check.how())
          .as(check.id())
          .doesNotContainIgnoringCase("held")
          .containsPattern("(?i)stands? by itself|on its stand or on a block")
          .containsIgnoringCase("step back beside the leaf");
    }
  }

  @Test
  void no_repair_runs_the_gate_before_somebody_watches_it() {
    for (Repair repair : BASE.repairs().values()) {
      boolean watched =
          repair.needs().contains(SetUp.GATE_RUNNING) || repair.needs().contains(SetUp.ABLE_TO_RUN);
      boolean said =
          repair.steps().stream()
              .filter(s -> !LATER.matcher(s).find())
              .anyMatch(s -> RUNS.matcher(s).find());
      boolean held = sentences(repair).anyMatch(s -> s.matches("(?i).*stop button.*"));
      assertThat(watched || !said || held).as("%s: %s", repair.id(), repair.steps()).isTrue();
    }
  }

  /** At both ends of the travel the block stands by itself. */
  @Test
  void nobody_holds_the_test_block() {
    for (String id : List.of("reversal-closing", "reversal-opening")) {
      assertThat(BASE.checks().get(id).how())
          .contains("stands by itself", "step back beside the leaf", "any part of your body");
    }
  }

  /** The state that a proof was made in is left by its own steps, once. */
  @Test
  void the_proof_of_the_release_leaves_engaging_to_the_way_out() {
    assertThat(BASE.checks().get("manual-release-works").how())
        .doesNotContain("engage the release");
    assertThat(String.join(" ", BASE.setUps().get("leaf-released").leave()))
        .contains("feel it engage", "locked");
  }

  /** Else the looks that come next are made at a dead gate. */
  @Test
  void a_danger_after_which_the_work_goes_on_gives_the_power_back_that_it_took() {
    SetUp powered = BASE.setUps().get(SetUp.POWERED);
    for (Stop stop : BASE.stops().values()) {
      boolean goesOn = stop.goesOn().filter(Role.TECHNICIAN::may).isPresent();
      boolean dead =
          stop.leaves()
              .map(BASE.setUps()::get)
              .filter(
                  s -> s.excludes().contains(SetUp.POWERED) || powered.excludes().contains(s.id()))
              .isPresent();
      List<Stop.Line> lines = stop.now().getOrDefault(Role.TECHNICIAN, List.of());
      boolean takes =
          lines.stream()
              .anyMatch(
                  l ->
                      l.text()
                          .matches(
                              "(?i).*(lock(ed)? off|mains off|batteries off|batteries and).*"));
      if (goesOn && !dead && takes) {
        assertThat(lines)
            .as(stop.id())
            .anySatisfy(
                l -> {
                  assertThat(l.deed()).contains(Stop.POWER);
                  assertThat(l.text()).containsPattern("nobody (is )?within reach of the leaf");
                });
      }
    }
    assertThat(BASE.stops().get("moves-uncommanded").now().get(Role.TECHNICIAN))
        .extracting(Stop.Line::deed)
        .anyMatch(d -> d.filter(Stop.POWER::equals).isPresent());
  }

  /** The capacitors of the supply feed the motor's terminals for a minute. */
  @Test
  void the_motor_terminals_are_proved_dead_before_hands_go_to_the_motor_or_the_release() {
    Pattern hands =
        Pattern.compile("motor's (power )?leads|Put the release back and feel it engage;");
    for (String id : List.of("motor-off", "motor-unplugged", "drive-free")) {
      SetUp setUp = BASE.setUps().get(id);
      for (List<String> steps : List.of(setUp.enter(), setUp.leave())) {
        int first = 0;
        while (first < steps.size() && !hands.matcher(steps.get(first)).find()) {
          first++;
        }
        if (first < steps.size()) {
          assertThat(String.join(" ", steps.subList(0, first)))
              .as("%s: %s", id, steps.get(first))
              .contains("motor terminals");
        }
      }
    }
  }

  /** It is gone through at a gate that nobody has proved dead yet. */
  @Test
  void nobody_pushes_the_leaf_of_a_gate_out_of_use_before_it_is_dead() {
    assertThat(BASE.setUps().get(SetUp.OUT_OF_USE).enter().get(0))
        .contains("only with the operator proved dead just now");
  }
}
