package yett.saying;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

/**
 * What people say is understood, in sayings that were written before any card was looked at. Every
 * third is kept aside: only its sums are told, docs/sayings.md.
 */
class HeardTest {
  private static final Hearing BY_WORDS = Hearing.byWords(Shipped.BASE);
  private static final int FIRST = 3;

  /** Shares of 1; what is told is told as it is. */
  private record Figures(
      double right, double all, double dangers, double falseAlarms, double silent) {}

  private static Figures measure(Hearing hearing, Predicate<HeardSaying> which, List<String> wrong)
      throws IOException {
    return measure(hearing, HeardSaying.all(), which, wrong);
  }

  private static Figures measure(
      Hearing hearing,
      List<HeardSaying> sayings,
      Predicate<HeardSaying> which,
      List<String> wrong) {
    Tellings tellings = new Tellings(hearing);
    Count right = new Count();
    Count whole = new Count();
    Count dangers = new Count();
    Count alarms = new Count();
    Count silent = new Count();
    for (HeardSaying saying : sayings.stream().filter(which).toList()) {
      Heard heard = tellings.hear(saying.say());
      List<Thing> asked = heard.dangerThings().stream().limit(FIRST).toList();
      List<Thing> found =
          Stream.concat(heard.things().stream().limit(FIRST), asked.stream()).toList();
      if (!saying.means().isEmpty()) {
        right.add(saying.means().stream().anyMatch(m -> HeardSaying.among(m, found)));
        whole.add(saying.means().stream().allMatch(m -> HeardSaying.among(m, found)));
        if (!right.last) {
          wrong.add("not understood: " + saying.say() + " -> " + heard.things());
        }
      }
      if (saying.dangers().isEmpty()) {
        alarms.add(asked.stream().anyMatch(t -> !saying.mayAsk().contains(t.card())));
        if (alarms.last) {
          wrong.add("false alarm: " + saying.say() + " -> " + asked);
        }
      } else {
        dangers.add(saying.dangers().stream().allMatch(d -> HeardSaying.among(d, asked)));
        if (!dangers.last) {
          wrong.add("danger missed: " + saying.say() + " -> " + heard);
        }
      }
      if (saying.isAboutNothing()) {
        silent.add(heard.findings().isEmpty());
        if (!silent.last) {
          wrong.add("nothing meant: " + saying.say() + " -> " + heard.things());
        }
      }
    }
    return new Figures(
        right.share(), whole.share(), dangers.share(), alarms.share(), silent.share());
  }

  private static final class Count {
    private int yes;
    private int all;
    private boolean last;

    void add(boolean is) {
      last = is;
      yes += is ? 1 : 0;
      all++;
    }

    double share() {
      return yes / (double) all;
    }
  }

  @Test
  void there_are_many_sayings_of_every_kind() throws IOException {
    List<HeardSaying> all = HeardSaying.all();
    assertThat(all).hasSizeGreaterThanOrEqualTo(300);
    assertThat(all).filteredOn(HeardSaying::isAboutNothing).hasSizeGreaterThanOrEqualTo(40);
    assertThat(all).filteredOn(s -> !s.dangers().isEmpty()).hasSizeGreaterThanOrEqualTo(60);
    for (int i = 0; i < all.size(); i++) {
      assertThat(all.get(i).aside()).as(all.get(i).say()).isEqualTo(i % 3 == 2);
    }
  }

  /** The figures are those of docs/sayings.md, with room for another processor. */
  @Test
  void what_may_be_looked_at_is_understood() throws IOException {
    List<String> wrong = new ArrayList<>();
    Figures figures = measure(Shipped.HEARING, s -> !s.aside(), wrong);

    assertThat(Shipped.HEARING.withoutMeanings()).isEmpty();
    assertThat(figures.right()).as(() -> told(figures, wrong)).isGreaterThan(0.97);
    assertThat(figures.all()).as(() -> told(figures, wrong)).isGreaterThan(0.96);
    assertThat(figures.dangers()).as(() -> told(figures, wrong)).isGreaterThan(0.97);
    assertThat(figures.falseAlarms()).as(() -> told(figures, wrong)).isLessThan(0.025);
    assertThat(figures.silent()).as(() -> told(figures, wrong)).isGreaterThan(0.9);
  }

  @Test
  void so_it_is_where_nobody_has_looked() throws IOException {
    Figures figures = measure(Shipped.HEARING, HeardSaying::aside, new ArrayList<>());

    assertThat(figures.right()).as(figures::toString).isGreaterThan(0.91);
    assertThat(figures.all()).as(figures::toString).isGreaterThan(0.87);
    assertThat(figures.dangers()).as(figures::toString).isGreaterThan(0.99);
    assertThat(figures.falseAlarms()).as(figures::toString).isLessThan(0.045);
    assertThat(figures.silent()).as(figures::toString).isGreaterThan(0.93);
  }

  @Test
  void so_are_sayings_that_were_written_later() throws IOException {
    List<HeardSaying> again = HeardSaying.again();
    assertThat(again.stream().filter(HeardSaying::aside)).hasSizeGreaterThanOrEqualTo(120);
    List<String> wrong = new ArrayList<>();
    Figures learned = measure(Shipped.HEARING, again, s -> !s.aside(), wrong);
    Figures aside = measure(Shipped.HEARING, again, HeardSaying::aside, new ArrayList<>());

    assertThat(learned.right()).as(() -> told(learned, wrong)).isGreaterThan(0.95);
    assertThat(learned.dangers()).as(() -> told(learned, wrong)).isGreaterThan(0.99);
    assertThat(aside.right()).as(aside::toString).isGreaterThan(0.95);
    assertThat(aside.dangers()).as(aside::toString).isGreaterThan(0.99);
    assertThat(aside.falseAlarms()).as(aside::toString).isLessThan(0.055);
  }

  /** Written before it was tried what is understood, with much that only sounds like danger. */
  @Test
  void so_are_sayings_that_were_written_blind() throws IOException {
    List<HeardSaying> anew = HeardSaying.anew();
    assertThat(anew).hasSizeGreaterThanOrEqualTo(400);
    assertThat(anew.stream().filter(HeardSaying::aside)).hasSizeGreaterThanOrEqualTo(130);
    List<String> wrong = new ArrayList<>();
    Figures learned = measure(Shipped.HEARING, anew, s -> !s.aside(), wrong);
    Figures aside = measure(Shipped.HEARING, anew, HeardSaying::aside, new ArrayList<>());

    assertThat(learned.right()).as(() -> told(learned, wrong)).isGreaterThan(0.97);
    assertThat(learned.dangers()).as(() -> told(learned, wrong)).isGreaterThan(0.97);
    assertThat(learned.falseAlarms()).as(() -> told(learned, wrong)).isLessThan(0.05);
    assertThat(aside.right()).as(aside::toString).isGreaterThan(0.9);
    assertThat(aside.dangers()).as(aside::toString).isGreaterThan(0.99);
    assertThat(aside.falseAlarms()).as(aside::toString).isLessThan(0.12);
  }

  /** Much in one breath, dangers said sideways, past, denied or feared, wrong words. */
  @Test
  void so_are_sayings_that_provoke() throws IOException {
    List<HeardSaying> hard = HeardSaying.hard();
    assertThat(hard.stream().filter(HeardSaying::aside)).hasSizeGreaterThanOrEqualTo(45);
    List<String> wrong = new ArrayList<>();
    Figures learned = measure(Shipped.HEARING, hard, s -> !s.aside(), wrong);
    Figures aside = measure(Shipped.HEARING, hard, HeardSaying::aside, new ArrayList<>());

    assertThat(learned.right()).as(() -> told(learned, wrong)).isGreaterThan(0.96);
    assertThat(learned.dangers()).as(() -> told(learned, wrong)).isGreaterThan(0.91);
    assertThat(learned.falseAlarms()).as(() -> told(learned, wrong)).isLessThan(0.13);
    assertThat(aside.right()).as(aside::toString).isGreaterThan(0.86);
    assertThat(aside.dangers()).as(aside::toString).isGreaterThan(0.99);
    assertThat(aside.falseAlarms()).as(aside::toString).isLessThan(0.12);
  }

  /** By somebody who had read nothing of the project; measured once before any change. */
  @Test
  void so_are_sayings_that_came_in_cold() throws IOException {
    List<HeardSaying> cold = HeardSaying.cold();
    assertThat(cold).hasSizeGreaterThanOrEqualTo(200);
    List<String> wrong = new ArrayList<>();
    Figures learned = measure(Shipped.HEARING, cold, s -> !s.aside(), wrong);
    Figures aside = measure(Shipped.HEARING, cold, HeardSaying::aside, new ArrayList<>());

    assertThat(learned.right()).as(() -> told(learned, wrong)).isGreaterThan(0.82);
    assertThat(learned.dangers()).as(() -> told(learned, wrong)).isGreaterThan(0.9);
    assertThat(learned.falseAlarms()).as(() -> told(learned, wrong)).isLessThan(0.06);
    assertThat(aside.right()).as(aside::toString).isGreaterThan(0.81);
    assertThat(aside.dangers()).as(aside::toString).isGreaterThan(0.8);
    assertThat(aside.falseAlarms()).as(aside::toString).isLessThan(0.13);
  }

  /** From the lives of callers, measured once before any change. */
  @Test
  void so_are_plain_sayings() throws IOException {
    List<HeardSaying> plain = HeardSaying.plain();
    assertThat(plain.stream().filter(HeardSaying::aside)).hasSizeGreaterThanOrEqualTo(50);
    List<String> wrong = new ArrayList<>();
    Figures learned = measure(Shipped.HEARING, plain, s -> !s.aside(), wrong);
    Figures aside = measure(Shipped.HEARING, plain, HeardSaying::aside, new ArrayList<>());

    assertThat(learned.right()).as(() -> told(learned, wrong)).isGreaterThan(0.91);
    assertThat(learned.dangers()).as(() -> told(learned, wrong)).isGreaterThan(0.85);
    assertThat(learned.falseAlarms()).as(() -> told(learned, wrong)).isLessThan(0.22);
    assertThat(aside.right()).as(aside::toString).isGreaterThan(0.81);
    assertThat(aside.dangers()).as(aside::toString).isGreaterThan(0.85);
    assertThat(aside.falseAlarms()).as(aside::toString).isLessThan(0.13);
  }

  /** At which end a gate stays is told apart, and what was only to be expected from what came. */
  @Test
  void the_end_at_which_it_is_stuck_is_heard() {
    Tellings tellings = new Tellings(Shipped.HEARING);
    assertThat(tellings.hear("our gate is stuck open").things().get(0).card())
        .isEqualTo("stays-open");
    assertThat(tellings.hear("our gate is stuck open").dangers()).isEmpty();
    assertThat(tellings.hear("the gate is stuck shut").things().get(0).card())
        .isEqualTo("stays-shut");
    assertThat(tellings.hear("I was to ring if it ever smoked, and now it has").dangerThings())
        .extracting(Thing::card)
        .contains("danger-burning");
  }

  @Test
  void without_the_model_it_is_understood_less_well() throws IOException {
    Figures tuned = measure(BY_WORDS, s -> !s.aside(), new ArrayList<>());
    Figures aside = measure(BY_WORDS, HeardSaying::aside, new ArrayList<>());

    assertThat(tuned.right()).as(tuned::toString).isGreaterThan(0.88);
    assertThat(tuned.dangers()).as(tuned::toString).isGreaterThan(0.93);
    assertThat(tuned.falseAlarms()).as(tuned::toString).isLessThan(0.11);
    assertThat(aside.right()).as(aside::toString).isGreaterThan(0.85);
    assertThat(aside.dangers()).as(aside::toString).isGreaterThan(0.75);
    assertThat(aside.falseAlarms()).as(aside::toString).isLessThan(0.14);
  }

  private static String told(Figures figures, List<String> wrong) {
    return figures + "\n" + String.join("\n", wrong);
  }
}
