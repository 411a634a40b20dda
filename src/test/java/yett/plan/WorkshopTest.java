package yett.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Costs of changing between set-ups, against sets of names and the rules said in words. */
class WorkshopTest {
  private static final List<Workshop.Stand> STANDS =
      List.of(
          new Workshop.Stand("cover-off", 2, 3, List.of(), List.of("locked-off")),
          new Workshop.Stand("released", 5, 7, List.of("locked-off"), List.of("running")),
          new Workshop.Stand("locked-off", 6, 4, List.of(), List.of()),
          new Workshop.Stand("tagged", 1, 2, List.of("released"), List.of()),
          new Workshop.Stand("running", 1, 0.5, List.of(), List.of("locked-off")));

  /** Exclusion holds both ways, whichever card names it. */
  private static boolean exclude(Workshop.Stand a, Workshop.Stand b) {
    return a.excludes().contains(b.id()) || b.excludes().contains(a.id());
  }

  private static Set<String> some(SplittableRandom random) {
    Set<String> names = new TreeSet<>();
    for (Workshop.Stand stand : STANDS) {
      Set<String> more = withOuter(stand.id());
      boolean fits =
          more.stream().noneMatch(m -> names.stream().anyMatch(n -> exclude(named(n), named(m))));
      if (random.nextBoolean() && fits) {
        names.addAll(more);
      }
    }
    return names;
  }

  private static Set<String> withOuter(String id) {
    Set<String> all = new TreeSet<>(Set.of(id));
    named(id).within().forEach(outer -> all.addAll(withOuter(outer)));
    return all;
  }

  /** Left is what cannot be beside the needed ones, and what is within something that is left. */
  private static boolean goes(String there, Set<String> needs) {
    return withOuter(there).stream()
        .anyMatch(t -> needs.stream().anyMatch(n -> exclude(named(n), named(t))));
  }

  private static Workshop.Stand named(String id) {
    return STANDS.stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void what_is_excluded_is_left_and_what_is_missing_is_entered() {
    Workshop workshop = new Workshop(STANDS);
    for (int seed = 0; seed < 200; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      Set<String> inForce = some(random);
      Set<String> needs = some(random);
      double cost = 0;
      double closing = 0;
      Set<String> after = new TreeSet<>(needs);
      for (String there : inForce) {
        closing += named(there).leave();
        if (goes(there, needs)) {
          cost += named(there).leave();
        } else {
          after.add(there);
        }
      }
      for (String needed : needs) {
        cost += inForce.contains(needed) ? 0 : named(needed).enter();
      }
      int state = workshop.state(inForce);
      int wanted = workshop.state(needs);
      assertThat(workshop.change(state, wanted)).as("seed " + seed).isEqualTo(cost);
      assertThat(workshop.close(state)).as("seed " + seed).isEqualTo(closing);
      assertThat(workshop.names(workshop.after(state, wanted)))
          .as("seed " + seed)
          .containsExactlyInAnyOrderElementsOf(after);
    }
  }

  @Test
  void what_is_entered_within_another_needs_it_and_goes_with_it() {
    Workshop workshop = new Workshop(STANDS);
    assertThat(workshop.names(workshop.state(List.of("tagged"))))
        .containsExactlyInAnyOrder("tagged", "released", "locked-off");
    int inForce = workshop.state(List.of("tagged"));
    int running = workshop.state(List.of("running"));
    assertThat(workshop.names(workshop.leaving(inForce, running)))
        .containsExactlyInAnyOrder("tagged", "released", "locked-off");
    assertThat(workshop.names(workshop.after(inForce, running))).containsExactly("running");
  }

  @Test
  void a_set_up_that_no_card_describes_costs_nothing() {
    Workshop workshop = new Workshop(STANDS);
    assertThat(workshop.state(List.of("unheard-of"))).isZero();
  }
}
