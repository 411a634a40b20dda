package yett.study.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.calculation.ChainSag;
import yett.calculation.LeadAcid;
import yett.calculation.Leaf;
import yett.calculation.SupplySetting;
import yett.interview.event.Answer;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.rules.Interpretation;
import yett.testing.Shipped;

class GateTest {
  private static final RuleBase BASE = Shipped.BASE;

  private final Gate gate = new Gate(5, 350, 20);
  private final Random random = new Random(1);

  /** By hand from the parabola: s² = 3·5.2·0.01/8. */
  @Test
  void a_longer_chain_hangs_deeper() {
    gate.chain.extra = 0.01;
    assertThat(gate.chain.sag()).isCloseTo(0.1396, within(5e-5));
    double before = gate.chain.sag();
    gate.chain.extra += 0.02;
    assertThat(gate.chain.sag())
        .isCloseTo(
            ChainSag.sagAfterChange(gate.chain.span, before, 0.02).orElseThrow(), within(1e-12));
  }

  @Test
  void hang_tension_and_movement_belong_together() {
    gate.chain.hang(0.07);
    double span = gate.chain.span;
    assertThat(span + gate.chain.extra).isCloseTo(ChainSag.length(span, 0.07), within(1e-12));
    assertThat(gate.chain.movement()).isCloseTo(ChainSag.movementForSag(0.07), within(1e-12));
    assertThat(gate.chain.tension())
        .isCloseTo(ChainSag.tension(Chain.WEIGHT, span, 0.07), within(1e-9));
  }

  /** 24 h of 0.06 A and 0.6 Ah of runs a day, out of 12 Ah. */
  @Test
  void a_dead_charger_empties_the_batteries_over_days() {
    gate.supply.chargerAlive = false;
    gate.supply.days(3, 0.6, gate.batteries);
    assertThat(gate.batteries.charge).isCloseTo(1 - 3 * 2.04 / 12, within(1e-12));
    assertThat(gate.run(true, true, random).end()).isEqualTo(Run.End.ARRIVED);
    gate.supply.days(4, 0.6, gate.batteries);
    assertThat(gate.run(true, true, random).moved()).isFalse();
  }

  @Test
  void a_live_charger_keeps_them_full() {
    gate.supply.days(30, 0.6, gate.batteries);
    assertThat(gate.batteries.charge).isEqualTo(1);
  }

  @Test
  void rest_voltage_goes_with_the_chart_of_sealed_blocks() {
    for (double charge : new double[] {0.25, 0.5, 0.75, 1}) {
      gate.batteries.charge = charge;
      assertThat(gate.batteries.rest() / 2)
          .isCloseTo(LeadAcid.restVoltage(LeadAcid.Build.AGM, charge), within(0.04));
    }
  }

  @Test
  void a_wrong_tap_scales_the_supply() {
    gate.supply.tap = 277;
    double mains = gate.supply.atTerminals(0.2);
    assertThat(gate.supply.dc())
        .isCloseTo(SupplySetting.secondaryVoltage(31, mains, 277), within(1e-9));
    assertThat(gate.supply.charges()).isFalse();
  }

  @Test
  void force_and_current_follow_mechanics() {
    assertThat(gate.pushForce()).isCloseTo(Leaf.rollingForce(350, 0.017, 0), within(1e-9));
    double force = gate.pushForce() + gate.chain.friction();
    assertThat(gate.current())
        .isCloseTo(gate.noLoad + Leaf.motorCurrent(force, Gate.SPEED, 0.5, 24), within(1e-9));
  }

  @Test
  void a_leaf_that_drags_turns_back_where_it_drags() {
    gate.hardSpot = 400;
    gate.hardPlace = 0.3;
    Run run = gate.run(false, true, random);
    assertThat(run.end()).isEqualTo(Run.End.OBSTRUCTION);
    assertThat(run.place()).isEqualTo(0.3);
  }

  @Test
  void a_lost_marker_shows_only_when_both_supplies_were_off() {
    gate.markerThere = false;
    assertThat(gate.run(true, true, random).arrived()).isTrue();
    gate.losePower();
    assertThat(gate.run(true, true, random).end()).isEqualTo(Run.End.LOST_POSITION);
  }

  @Test
  void a_moved_marker_shifts_both_ends_the_same_way() {
    gate.markerOffset = 0.06;
    gate.losePower();
    assertThat(gate.run(true, true, random).error()).isCloseTo(0.06, within(0.03));
    assertThat(gate.run(false, true, random).error()).isCloseTo(-0.06, within(0.03));
  }

  static Iterable<String> faults() {
    return Fault.ALL.keySet().stream().filter(f -> !f.equals("not-in-rule-base")).sorted().toList();
  }

  @ParameterizedTest
  @MethodSource("faults")
  void a_fault_is_seen_in_the_parts_and_its_repairs_mend_it(String fault) {
    for (int i = 0; i < 30; i++) {
      Gate broken = new Gate(5, 350, 20);
      Fault.happen(broken, Set.of(fault), 5, random);
      assertThat(broken.wrong()).contains(fault);
      for (int pass = 0; pass < 2; pass++) {
        broken.wrong().forEach(cause -> Mending.ALL.get(repairOf(cause)).accept(broken));
      }
      assertThat(broken.wrong()).isEmpty();
      assertThat(broken.contents(random)).isTrue();
    }
  }

  private static String repairOf(String cause) {
    return BASE.repairs().values().stream()
        .filter(r -> r.removes().containsKey(cause))
        .max(Comparator.comparingDouble(r -> r.removes().get(cause)))
        .map(Repair::id)
        .orElseThrow();
  }

  /** By hand: 1/e² of the light at the half-width of a Gaussian beam (Siegman, Lasers, 1986). */
  @Test
  void a_beam_off_its_axis_loses_light() {
    gate.beamMargin = 4;
    gate.beamAngle = Gate.BEAM_WIDTH;
    assertThat(gate.beamLight()).isCloseTo(4 / (Math.E * Math.E), within(1e-12));
  }

  @Test
  void batteries_float_at_what_their_cells_want() {
    assertThat(gate.supply.wanted()).isCloseTo(LeadAcid.floatVoltage(12, 20), within(0.3));
  }

  /** By hand: 1.5 A through 8 ohm, out and back, half of it in the neutral. */
  @Test
  void a_thin_feeder_lifts_the_neutral() {
    gate.supply.feederResistance = 8;
    assertThat(gate.supply.neutralToEarth(1.5)).isCloseTo(6, within(1e-12));
    assertThat(gate.supply.atTerminals(1.5)).isCloseTo(gate.supply.service - 12, within(1e-12));
  }

  /** By hand: Joule's 2 A squared through 0.7 ohm, and half of 24 V times 2 A. */
  @Test
  void the_motor_turns_into_heat_what_it_does_not_turn_into_force() {
    gate.released = true;
    assertThat(gate.motorHeat()).isCloseTo(2 * 2 * 0.7 + 24, within(1e-9));
  }

  @Test
  void a_dead_supply_unit_empties_the_batteries() {
    gate.supply.transformerDead = true;
    gate.supply.days(10, 0.6, gate.batteries);
    assertThat(gate.wrong()).containsExactly("dc-supply-dead", "batteries-low");
  }

  /**
   * So do most people who look; some cannot say how it came, or have nothing else on the circuit.
   */
  @Test
  void a_sound_gate_shows_the_first_outcome_of_every_check() {
    Words.ALL.forEach(
        (id, sight) -> {
          Check check = BASE.checks().get(id);
          String first = check.outcomes().get(0).id();
          long ordinary =
              IntStream.range(0, 100)
                  .filter(i -> sight.of(new Gate(5, 350, 20), random).equals(first))
                  .count();
          assertThat(ordinary).as(id).isGreaterThan(id.equals("how-it-came") ? 20 : 40);
        });
  }

  @Test
  void what_it_answers_and_mends_are_checks_and_repairs_of_the_cards() {
    assertThat(BASE.ordinaryChecks().map(Check::id).filter(SimulatedGate::answers))
        .hasSizeGreaterThan(120);
    assertThat(BASE.repairs().keySet()).containsAll(Mending.ALL.keySet());
  }

  @Test
  void it_answers_in_the_words_of_the_cards() {
    Map<String, Double> often = new HashMap<>();
    Fault.ALL.keySet().forEach(fault -> often.put(fault, 1.0));
    int asked = 0;
    int untold = 0;
    for (long seed = 1; seed <= 100; seed++) {
      SimulatedGate simulated = SimulatedGate.of(seed, often);
      assertThat(simulated.complaints()).isNotEmpty().isSubsetOf(BASE.checks().keySet());
      for (Check check : BASE.checks().values()) {
        Answer answer = simulated.answer(check, Optional.empty());
        asked += Interpretation.relative(check) ? 0 : 1;
        untold += answer instanceof Answer.CannotTell && !Interpretation.relative(check) ? 1 : 0;
        if (answer instanceof Answer.Chosen chosen) {
          assertThat(check.indexOf(chosen.outcome())).as(check.id()).isNotNegative();
        } else if (answer instanceof Answer.Read read) {
          assertThat(check.measures().orElseThrow().possible(read.value())).isTrue();
        }
      }
    }
    assertThat(asked).isGreaterThan(1_000);
    assertThat(untold).isLessThan(asked / 20);
  }
}
