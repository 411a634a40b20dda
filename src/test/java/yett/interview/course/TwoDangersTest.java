package yett.interview.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import yett.interview.event.Answer;
import yett.interview.site.SiteFacts;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.Stop;
import yett.rules.Conclusion.StopNow;
import yett.rules.Fact;
import yett.rules.Judge;
import yett.rules.Judgement;
import yett.testing.Shipped;

/** Any two dangers together: nobody is told one thing and its opposite in the same call. */
class TwoDangersTest {
  /** What tells people to move or unlock the leaf with their hands. */
  private static final Pattern HANDS_ON =
      Pattern.compile(
          "(?i)moved by hand|release (it|the leaf) (by hand|from inside)|push it open|"
              + "unlocks? it by hand|unlock the gate by hand|hold it and release|it is released");

  /** What tells them to keep their hands off it. */
  private static final Pattern HANDS_OFF =
      Pattern.compile(
          "(?i)do not (push|touch (the gate|leaf)|release the leaf)|nobody touches the gate|"
              + "keep (everybody )?away|get (everybody )?away|keep everybody (two metres )?away");

  private static final Pattern STAY =
      Pattern.compile("(?i)\\bstay (with|where)|set people at both sides|keep them warm");

  private static final Pattern GO =
      Pattern.compile("(?i)get (everybody )?away|at least as far as the gate is high");

  /** Stops raised together, with what is told of both. */
  private record Pair(Set<String> stops, List<String> lines) {}

  @Test
  void nobody_is_told_to_move_what_nobody_may_touch_or_to_stay_where_nobody_may_be() {
    Set<Set<String>> pairs = new HashSet<>();
    for (Role role : List.of(Role.CALLER, Role.TECHNICIAN, Role.ELECTRICIAN)) {
      for (Pair pair : pairs(role)) {
        pairs.add(pair.stops());
        if (role == Role.CALLER || pair.stops().contains("leaf-off-track")) {
          assertThat(pair.lines().stream().filter(l -> says(HANDS_ON, l)).toList())
              .as("hands on, %s: %s", role, pair)
              .matches(on -> on.isEmpty() || pair.lines().stream().noneMatch(TwoDangersTest::off));
        }
        assertThat(pair.lines().stream().filter(l -> says(STAY, l)).toList())
            .as("stay, %s: %s", role, pair)
            .matches(stay -> stay.isEmpty() || pair.lines().stream().noneMatch(l -> says(GO, l)));
        assertThat(pair.lines()).as("%s", pair).isNotEmpty();
      }
    }
    assertThat(pairs).hasSizeGreaterThan(40);
  }

  @Test
  void a_caller_whose_leaf_has_caught_somebody_frees_them_by_hand_if_nothing_else_is_wrong() {
    List<Stop> alone = List.of(Shipped.BASE.stops().get("person-trapped"));
    assertThat(lines(alone, Role.CALLER, Set.of()))
        .anyMatch(l -> l.contains("nlock the gate by hand"));
    assertThat(told("person-trapped", "leaf-off-track"))
        .noneMatch(l -> l.contains("nlock the gate by hand"))
        .anyMatch(l -> l.startsWith("Do not push, pull or prop"))
        .anyMatch(l -> l.startsWith("Call the emergency number"));
    assertThat(told("person-trapped", "fire-on-site"))
        .noneMatch(l -> l.startsWith("Stay with"))
        .anyMatch(l -> l.startsWith("Get away from the fire"));
  }

  @Test
  void a_leaf_that_has_caught_somebody_is_not_pushed_open_for_those_who_are_shut_in() {
    assertThat(told("person-trapped", "shut-in-and-needs-help"))
        .noneMatch(l -> l.contains("push it open"))
        .anyMatch(l -> l.contains("moved by hand away from the person"));
  }

  /** One list for both: nobody runs it, but hands may free a person; the switch is named once. */
  @Test
  void two_dangers_in_one_list_repeat_nothing_and_do_not_forbid_what_frees_people() {
    List<Stop> both =
        List.of(
            Shipped.BASE.stops().get("person-trapped"),
            Shipped.BASE.stops().get("closes-on-people"));
    assertThat(Stop.now(both, Role.CALLER, Set.of()))
        .startsWith(both.get(0).now(Role.CALLER).get(0))
        .doesNotHaveDuplicates()
        .anyMatch(l -> l.contains("moved by hand away from the person"))
        .noneMatch(l -> l.contains("do not open or close"))
        .filteredOn(l -> l.contains("gate has a switch"))
        .hasSize(1);
  }

  @Test
  void the_switch_is_named_once_whatever_the_two_dangers_are() {
    Pattern off = Pattern.compile("(?i)if (there is a|the gate has a) (power )?switch");
    List<Stop> all = List.copyOf(Shipped.BASE.stops().values());
    for (Stop one : all) {
      for (Stop other : all.subList(all.indexOf(one) + 1, all.size())) {
        assertThat(Stop.now(List.of(one, other), Role.CALLER, Set.of()))
            .as(one.id() + ", " + other.id())
            .filteredOn(l -> says(off, l))
            .hasSizeLessThan(2);
      }
    }
  }

  private static List<String> told(String one, String other) {
    return pairs(Role.CALLER).stream()
        .filter(p -> p.stops().equals(Set.of(one, other)))
        .findFirst()
        .orElseThrow()
        .lines();
  }

  private static boolean says(Pattern pattern, String line) {
    return pattern.matcher(line).find();
  }

  /** Said outright; "if it leans, wait" leaves it to who sees it. */
  private static boolean off(String line) {
    return says(HANDS_OFF, line);
  }

  private static List<Pair> pairs(Role role) {
    List<Pair> pairs = new ArrayList<>();
    List<Fact> raising = raising(role);
    try (Judge judge = Shipped.QUICK.rules().newJudge()) {
      for (Fact one : raising) {
        for (Fact other : raising.subList(raising.indexOf(one) + 1, raising.size())) {
          Set<Fact> facts = new HashSet<>(new SiteFacts(Shipped.BASE).facts(Map.of()));
          facts.add(new Fact.Person(role));
          facts.add(one);
          facts.add(other);
          Judgement judgement = judge.judge(facts);
          List<Stop> stops =
              judgement.stops().stream()
                  .map(StopNow::stop)
                  .distinct()
                  .map(Shipped.BASE.stops()::get)
                  .toList();
          if (stops.size() == 2) {
            Set<String> ids = Set.of(stops.get(0).id(), stops.get(1).id());
            pairs.add(new Pair(ids, lines(stops, role, judgement.withheld())));
          }
        }
      }
    }
    return pairs;
  }

  private static List<String> lines(List<Stop> stops, Role role, Set<String> withheld) {
    return stops.stream().flatMap(s -> s.now(role, withheld).stream()).toList();
  }

  private static List<Fact> raising(Role role) {
    List<Fact> raising = new ArrayList<>();
    for (Check check : Shipped.BASE.ordinaryChecks().filter(Check::danger).toList()) {
      for (int o = 1; o < check.outcomes().size(); o++) {
        Answer answer = new Answer.Chosen(check.outcomes().get(o).id());
        raising.add(Representatives.fact(check, answer, role, raising.size() + 1L));
      }
    }
    return raising;
  }
}
