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
    Tellings tellings = new Tellings(hearing);
    Count right = new Count();
    Count whole = new Count();
    Count dangers = new Count();
    Count alarms = new Count();
    Count silent = new Count();
    for (HeardSaying saying : HeardSaying.all().stream().filter(which).toList()) {
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

  @Test
  void what_may_be_looked_at_is_understood() throws IOException {
    List<String> wrong = new ArrayList<>();
    Figures figures = measure(Shipped.HEARING, s -> !s.aside(), wrong);
    System.err.println(figures + "\n" + String.join("\n", wrong));
    assertThat(figures.right()).as(() -> String.join("\n", wrong)).isGreaterThan(0.97);
  }

  @Test
  void so_it_is_where_nobody_has_looked() throws IOException {
    Figures figures = measure(Shipped.HEARING, HeardSaying::aside, new ArrayList<>());
    System.err.println(figures);
  }

  @Test
  void without_the_model_it_is_understood_less_well() throws IOException {
    System.err.println(measure(BY_WORDS, s -> !s.aside(), new ArrayList<>()));
    System.err.println(measure(BY_WORDS, HeardSaying::aside, new ArrayList<>()));
  }
}
