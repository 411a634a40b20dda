package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static yett.rules.Rules.complained;
import static yett.rules.Rules.done;
import static yett.rules.Rules.example;
import static yett.rules.Rules.read;
import static yett.rules.Rules.said;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.SetUp;
import yett.rules.Conclusion.Finding;
import yett.rules.Conclusion.Senseless;
import yett.rules.Conclusion.Unavailable;
import yett.rules.Rules.Example;

/** What has no sense at a gate as it stands is neither asked nor counted. */
class SenseRulesTest extends ShownByExamples {
  private static final Fact STANDS_STILL = said(1, "what-turns", "motor-still");
  private static final Fact OBEYS_NOTHING = said(2, "direct-command", "does-not");

  /**
   * What needs a gate that may be run and is asked of one that does not move all the same: whether
   * and how it moves, which command reaches it, what flows and what drops when it is told to.
   */
  private static final Set<String> WHETHER_IT_MOVES =
      Set.of(
          "battery-fall",
          "battery-running-voltage",
          "beam-supply-in-run",
          "block-running-difference",
          "board-warmed",
          "charging-current",
          "clutch-line",
          "connector-drop",
          "detector-sees",
          "dc-in-run",
          "device-input",
          "direct-command",
          "end-gap",
          "finds-reference",
          "input-bridged",
          "ac-motor-voltage",
          "motor-output-voltage",
          "motor-plug-voltage",
          "motor-tapped",
          "pack-when-warm",
          "neutral-earth-voltage",
          "running-current",
          "runs-on-batteries",
          "ten-runs",
          "terminal-drop",
          "what-turns");

  static Stream<Example> examples() {
    return Stream.of(
        example("a gate that stands still has no speed and no stopping place", STANDS_STILL),
        example(
            "the gap of a marker is asked once somebody has seen that there is one",
            new Fact.ComplaintsTaken()),
        example(
            "which way a marker faces is asked once somebody has seen that there is one",
            new Fact.ComplaintsTaken()),
        example("which input is on is asked once one is shown as on", new Fact.ComplaintsTaken()),
        example(
            "wires are taken off the input of a command or a timer that is on",
            new Fact.ComplaintsTaken()),
        example(
            "which switch is pressed or turned is asked once one is found",
            new Fact.ComplaintsTaken()),
        example(
            "a caller who named the switch that is pressed or turned is not asked about each of them",
            new Fact.Person(Role.CALLER),
            said(1, 0, Role.CALLER, "which-held", "hold")),
        example("a motor is tapped once it was seen to stand", new Fact.ComplaintsTaken()),
        example("a motor that runs has had its command", complained("motor-runs-leaf-still")),
        example("a gate that will not close stands open", complained("stays-open")),
        example("a gate that will not open stands shut", complained("stays-shut")),
        example(
            "a gate that stops on its way stands part of the way open",
            complained("opens-partway")),
        example("a gate whose breaker is off has no mains", said(1, "breaker-position", "tripped")),
        example("a gate on which nothing is lit is dark", said(1, "display-lit", "dark")),
        example("a gate whose release is ajar may be loose", said(1, "release-lid", "ajar")),
        example("nobody denies what was reported by leaving a look out", complained("slow")),
        example(
            "the supply of a beam in a run is measured once the beam drops out in one",
            new Fact.ComplaintsTaken()),
        example(
            "a caller who found nothing pressed or turned is not asked about each switch",
            new Fact.Person(Role.CALLER),
            said(1, 0, Role.CALLER, "held-devices", "none")),
        example(
            "a caller who has looked at the stop buttons is not asked about them again",
            new Fact.Person(Role.CALLER),
            said(1, 0, Role.CALLER, "stop-button-look", "at-rest")),
        example(
            "a fault that is shown is read before the power is cut",
            new Fact.ComplaintsTaken(),
            complained("fault-lamp")),
        example(
            "another transmitter is tried after a plain run",
            new Fact.Person(Role.TECHNICIAN),
            new Fact.ComplaintsTaken()),
        example(
            "a gate that obeys no command at the controller has no speed and no stopping place",
            OBEYS_NOTHING),
        example(
            "a gate that will not close has no closed place",
            complained("stays-open"),
            said(1, "direct-command", "one-way")),
        example(
            "a gate that will not open has no open place",
            complained("stays-shut"),
            said(1, "direct-command", "one-way")),
        example(
            "where no command fails there is no device to look at",
            said(1, "which-commands", "none-fails")),
        example("a marker that is gone has no gap and no face", said(1, "marker-look", "gone")),
        example("a beam that is out cannot drop out", said(1, "beam-light", "blocked")),
        example(
            "a dark controller is judged once somebody has measured what feeds it",
            new Fact.ComplaintsTaken(),
            said(1, "display-lit", "dark")),
        example(
            "which commands fail is told by the kind that fails",
            said(1, "kind-that-fails", "transmitters")),
        example(
            "what was told about the days before a repair is not asked again after it",
            said(1, "when-it-fails", "no-pattern"),
            done("free-leaf", 1)),
        example(
            "a gate without power is not tried",
            complained("does-nothing"),
            said(1, "display-lit", "dark")),
        example("a chain that is off does not hang", said(1, "chain-looks", "parted")),
        example(
            "a detector that was reset is not reset once more to see what it does",
            done("reset-detector", 1)),
        example(
            "batteries that do not run the gate cannot sag under it",
            said(1, "runs-on-batteries", "not-at-all")),
        example(
            "a gate without power answers no command and shows nothing",
            complained("does-nothing"),
            said(1, "display-lit", "dark")),
        example("where the speed of the leaf makes no sense, nothing of a run does", STANDS_STILL),
        example(
            "a gate that still does nothing after a repair has no speed and no stopping place",
            complained("does-nothing"),
            STANDS_STILL,
            done("replace-controller", 1),
            new Fact.StillFails(1)),
        example("of a gate that does nothing nobody tells how it runs", complained("does-nothing")),
        example(
            "of a gate that does not open nobody tells how it closes", complained("stays-shut")),
        example(
            "a gate without power gives no warning",
            complained("does-nothing"),
            said(1, "display-lit", "dark")),
        example(
            "a gate that is held open on purpose has no closed place",
            complained("stays-open"),
            said(1, "held-devices", "one")),
        example(
            "the wires of the commands come off after a look at the lamps of the inputs",
            new Fact.ComplaintsTaken()),
        example(
            "the switches are looked at before anything else of a dark operator",
            new Fact.ComplaintsTaken(),
            complained("does-nothing"),
            said(1, "display-lit", "dark")),
        example("mains that is not there cannot dip", said(1, "mains-lamp", "no-mains")),
        example("a circuit that is off cannot dip", said(1, "breaker-position", "tripped")),
        example(
            "a caller is not asked how a gate answers whose switch is off",
            new Fact.Person(Role.CALLER),
            said(1, "breaker-position", "tripped")),
        example(
            "a caller switches on only after a look at what is off",
            new Fact.Person(Role.CALLER),
            new Fact.ComplaintsTaken()),
        example(
            "a caller releases a stop button after a look at it",
            new Fact.Person(Role.CALLER),
            new Fact.ComplaintsTaken()));
  }

  private static <C extends Conclusion> List<C> concluded(Class<C> kind, Fact... facts) {
    return Rules.judge(List.of(facts)).conclusions().stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }

  private static Set<String> senseless(Fact... facts) {
    return concluded(Senseless.class, facts).stream()
        .map(Senseless::check)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void what_a_moving_gate_is_asked_is_not_asked_of_one_that_stands_still() {
    Set<String> asked = new TreeSet<>();
    for (Check check : Rules.BASE.checks().values()) {
      if (check.kind() == Check.Kind.CHECK && check.needs().contains(SetUp.GATE_RUNNING)) {
        asked.add(check.id());
      }
    }
    assertThat(asked).hasSizeGreaterThan(30).containsAll(WHETHER_IT_MOVES);
    asked.removeAll(WHETHER_IT_MOVES);
    asked.removeAll(senseless(STANDS_STILL, OBEYS_NOTHING));
    assertThat(asked).isEmpty();
  }

  @Test
  void what_was_reported_is_not_denied_by_leaving_its_look_out() {
    assertThat(Rules.judge(complained("noisy-chain")).unassumed()).containsExactly("noise-kind");
    assertThat(Rules.judge(complained("stays-open")).unassumed()).isEmpty();
  }

  /** A lamp is steady, dim or out by itself only as long as something feeds it. */
  @Test
  void what_is_seen_by_its_own_light_is_looked_at_with_the_power_on() {
    Set<String> shown =
        Set.of("beam-light", "beam-half-covered", "beam-supply", "display-lit", "alarm-heard");
    for (String check : shown) {
      assertThat(Rules.BASE.checks().get(check).needs()).as(check).contains("powered");
    }
    assertThat(Rules.BASE.setUps().get("powered").excludes()).contains(SetUp.LOCKED_OFF);
  }

  @Test
  void nobody_tries_commands_at_a_gate_that_is_dead() {
    Fact dark = said(1, "display-lit", "dark");
    assertThat(senseless(dark)).doesNotContain("which-commands");
    assertThat(senseless(dark, complained("does-nothing")))
        .contains("which-commands", "beam-light", "second-transmitter");
  }

  private static Set<String> unavailable(Fact... facts) {
    return Rules.judge(facts).unavailable();
  }

  @Test
  void a_gate_without_power_is_not_tried_until_something_was_done_about_it() {
    Fact dead = complained("does-nothing");
    Fact dark = said(1, "display-lit", "dark");
    assertThat(unavailable(dead, dark)).contains("response", "direct-command");
    assertThat(unavailable(dead, dark, done("switch-on-once", 1)))
        .doesNotContain("response", "direct-command");
    assertThat(unavailable(complained("slow"), dark)).doesNotContain("response");
  }

  @Test
  void a_caller_who_says_that_the_stop_button_is_in_may_let_it_out() {
    Fact caller = new Fact.Person(Role.CALLER);
    Fact taken = new Fact.ComplaintsTaken();
    Fact one = said(1, 0, Role.CALLER, "held-devices", "one");
    assertThat(unavailable(caller, taken, one))
        .contains("release-stop-button")
        .doesNotContain("which-held");
    assertThat(
            unavailable(caller, taken, one, said(2, 0, Role.CALLER, "which-held", "stop-button")))
        .doesNotContain("release-stop-button");
  }

  @Test
  void a_dark_board_is_judged_only_with_a_reading_of_what_feeds_it() {
    Fact taken = new Fact.ComplaintsTaken();
    Fact dark = said(1, "display-lit", "dark");
    assertThat(unavailable(taken, dark)).contains("controller-alive");
    assertThat(unavailable(taken, dark, read(2, "dc-supply-voltage", "31 V")))
        .doesNotContain("controller-alive");
    assertThat(
            unavailable(
                taken,
                dark,
                new Fact.Untold("dc-supply-voltage", 2),
                new Fact.Untold("charging-voltage", 3)))
        .doesNotContain("controller-alive");
  }

  @Test
  void the_days_before_a_repair_are_asked_about_once() {
    assertThat(unavailable(said(1, "when-it-fails", "rain"), done("free-leaf", 1)))
        .contains("when-it-fails")
        .doesNotContain("rest-helps");
    assertThat(unavailable(said(1, "when-it-fails", "rain"))).doesNotContain("when-it-fails");
    assertThat(unavailable(said(1, 0, Role.CALLER, "when-it-fails", "rain"), done("free-leaf", 1)))
        .doesNotContain("when-it-fails");
  }

  @Test
  void whoever_told_the_kind_of_command_that_fails_is_not_asked_which_fail() {
    assertThat(unavailable(said(1, "kind-that-fails", "transmitters"))).contains("which-commands");
    assertThat(unavailable(said(1, "kind-that-fails", "no-one-kind")))
        .doesNotContain("which-commands");
  }

  @Test
  void what_was_answered_before_does_not_count() {
    Fact speed = said(3, "speed-seen", "much-slower");
    assertThat(concluded(Finding.class, speed))
        .extracting(Finding::check)
        .containsExactly("speed-seen");
    assertThat(concluded(Finding.class, speed, STANDS_STILL))
        .extracting(Finding::check)
        .containsExactly("what-turns");
  }

  @Test
  void a_repair_may_have_made_it_move() {
    Fact mended = done("replace-motor-lead", 1);
    Fact speed = said(5, 1, Role.TECHNICIAN, "speed-seen", "usual");
    assertThat(concluded(Unavailable.class, STANDS_STILL))
        .extracting(Unavailable::card)
        .contains("speed-seen");
    assertThat(concluded(Unavailable.class, STANDS_STILL, mended))
        .extracting(Unavailable::card)
        .doesNotContain("speed-seen");
    assertThat(concluded(Finding.class, STANDS_STILL, mended, speed))
        .extracting(Finding::check)
        .contains("speed-seen");
  }

  /** A name that no card has would be passed over in silence. */
  @Test
  void the_rules_name_checks_that_there_are() {
    Pattern some = Pattern.compile("id in \\(([^)]*)\\)");
    Set<String> named = new TreeSet<>();
    Rules.BASE
        .rules()
        .forEach(
            (file, text) -> {
              if (file.endsWith("sense.drl")) {
                some.matcher(text).results().forEach(m -> named.addAll(names(m.group(1))));
              }
            });
    assertThat(named).hasSizeGreaterThan(40);
    assertThat(Rules.BASE.checks().keySet()).containsAll(named);
  }

  private static List<String> names(String list) {
    return Stream.of(list.split(",")).map(n -> n.strip().replace("\"", "")).toList();
  }

  /** A dark operator shows no mains, however much of it there is. */
  @Test
  void mains_that_was_measured_is_there_whatever_the_operator_shows() {
    Fact dark = said(1, "mains-lamp", "no-mains");
    assertThat(senseless(dark)).contains("charging-current");
    assertThat(senseless(dark, read(2, "mains-at-terminals", "231 V")))
        .doesNotContain("charging-current");
    assertThat(senseless(dark, read(2, "mains-at-terminals", "3 V"))).contains("charging-current");
    assertThat(senseless(dark, read(2, "dc-supply-voltage", "31.8 V")))
        .doesNotContain("charging-current");
  }
}
