package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.testing.Size;

/**
 * A slip of the pen anywhere gives a sound rule base or problems with places, never a stack trace
 * or nonsense. Most slips are made in a small rule base that holds every field of every kind of
 * card, and some in the shipped one.
 */
class MutatedCardsTest {
  private static final int MUTANTS = Size.of(500, 3_000);
  private static final SortedMap<String, String> EVERY_FIELD =
      cards(Path.of("src/test/resources/every-field"));

  static List<String> kinds() {
    return CardSchemas.kinds().stream().filter(kind -> !kind.equals("add-on")).toList();
  }

  @ParameterizedTest
  @MethodSource("kinds")
  void the_small_rule_base_holds_every_field(String kind) {
    Set<String> held = new TreeSet<>();
    EVERY_FIELD.forEach(
        (name, text) ->
            CardFile.read(name, text, List.of()).stream()
                .filter(d -> d.root().propertyNames().iterator().next().equals(kind))
                .forEach(d -> held.addAll(d.root().propertyNames())));
    assertThat(held).isEqualTo(CardSchemas.keys(CardSchemas.ofKind(kind)));
    assertThat(CardSchemas.errors(String.join("---\n", EVERY_FIELD.values()))).isEmpty();
  }

  @Test
  void a_slip_of_the_pen_gives_a_rule_base_or_problems_with_places() {
    RuleBaseFiles files = new RuleBaseFiles();
    assertThat(files.read(EVERY_FIELD).causes()).hasSize(4);
    List<String> names = List.copyOf(EVERY_FIELD.keySet());
    int told =
        IntStream.range(0, MUTANTS)
            .map(seed -> slip(files, EVERY_FIELD, any(names, seed), seed))
            .sum();
    assertThat(told).as("mutants with a problem").isGreaterThan(MUTANTS / 2);
  }

  private static String any(List<String> names, int seed) {
    return names.get(Math.floorMod(seed, names.size()));
  }

  @Test
  void a_slip_of_the_pen_in_a_shipped_file_is_told_the_same_way() {
    SortedMap<String, String> shipped = cards(Path.of("knowledge"));
    RuleBaseFiles files = new RuleBaseFiles();
    files.read(shipped);
    List<String> names = List.copyOf(shipped.keySet());
    int told = 0;
    int tried = 0;
    for (int i = 0; i < names.size(); i += Size.of(5, 1)) {
      told += slip(files, shipped, names.get(i), names.get(i).hashCode());
      tried++;
    }
    assertThat(told).as("mutants with a problem").isGreaterThan(tried / 3);
  }

  private static SortedMap<String, String> cards(Path folder) {
    SortedMap<String, String> files = new TreeMap<>(KnowledgeSource.folder(folder).files());
    files.keySet().removeIf(name -> !name.endsWith(".yaml") || name.endsWith(".case.yaml"));
    return files;
  }

  private static int slip(
      RuleBaseFiles reader, SortedMap<String, String> sound, String name, int seed) {
    SortedMap<String, String> files = new TreeMap<>(sound);
    files.put(name, Mutation.of(sound.get(name), new Random(seed * 0x9E3779B97F4A7C15L)));
    try {
      sane(reader.read(files));
      return 0;
    } catch (KnowledgeException e) {
      e.problems().forEach(p -> clear(p, "seed " + seed + ", " + name));
      return 1;
    } catch (RuntimeException | AssertionError e) {
      return fail("seed %d: %s with\n%s".formatted(seed, e, files.get(name)), e);
    }
  }

  private static void clear(Problem problem, String where) {
    boolean clear =
        !problem.message().isBlank()
            && !problem.message().contains("null")
            && !problem.message().contains("Exception")
            && !problem.message().contains("java.");
    if (!clear || problem.line() < 1 && !problem.kind().equals("missing-cause")) {
      fail("%s: a poor message: %s: %s", where, problem.kind(), problem);
    }
  }

  /** What was taken without a word makes sense. Plain conditions, as there are millions of them. */
  private static void sane(RuleBase base) {
    for (Cause cause : base.causes().values()) {
      require(cause, !cause.name().isBlank() && !cause.source().isBlank());
      require(cause, cause.prior() >= 0.0001 && cause.prior() <= 0.9);
      require(cause, cause.consequences().values().stream().allMatch(MutatedCardsTest::chance));
      require(cause, cause.leadsTo().values().stream().allMatch(MutatedCardsTest::chance));
      require(cause, base.effects().keySet().containsAll(cause.leadsTo().keySet()));
    }
    for (Effect effect : base.effects().values()) {
      require(effect, !effect.name().isBlank() && !effect.source().isBlank());
      require(effect, effect.leadsTo().values().stream().allMatch(MutatedCardsTest::chance));
      require(effect, effect.shows().values().stream().allMatch(MutatedCardsTest::row));
    }
    for (Check check : base.checks().values()) {
      require(check, !check.ask().isBlank() && check.outcomes().size() > 1);
      require(check, row(check.otherwise()));
      require(check, check.likelihood().values().stream().allMatch(MutatedCardsTest::row));
    }
    for (Repair repair : base.repairs().values()) {
      require(repair, !repair.name().isBlank());
      require(repair, repair.removes().values().stream().allMatch(MutatedCardsTest::chance));
      require(repair, repair.minutes() >= 0 && repair.minutes() <= 1440);
    }
  }

  private static void require(Card card, boolean sane) {
    if (!sane) {
      fail("taken without a word: " + card);
    }
  }

  private static boolean chance(double p) {
    return p >= 0 && p <= 1;
  }

  private static boolean row(double[] row) {
    double sum = 0;
    for (double p : row) {
      if (!chance(p)) {
        return false;
      }
      sum += p;
    }
    return Math.abs(sum - 1) < 1e-9;
  }
}
