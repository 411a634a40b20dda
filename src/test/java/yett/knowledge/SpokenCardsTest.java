package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

/**
 * What is read out to somebody on the telephone, on the shipped cards: there, and in plain words.
 */
class SpokenCardsTest {
  private static final RuleBase BASE = Shipped.BASE;

  /** Words of the trade that a caller need not know. */
  private static final Pattern TRADE =
      Pattern.compile(
          "\\b(leaf|operator|transmitter|controller|terminals?|isolator|sprocket|idler|beams?|loops?"
              + "|receiver|limits?|sensor|relay|voltage|amperes?|interlock|credential|repair|cause)\\b",
          Pattern.CASE_INSENSITIVE);

  @Test
  void every_check_that_a_caller_may_be_asked_has_plain_words() {
    assertThat(BASE.checks().values())
        .filteredOn(c -> c.who() == Role.CALLER && c.kind() != Check.Kind.PROOF)
        .hasSizeGreaterThan(50)
        .allSatisfy(c -> plain(c.id(), List.of(c.lay())));
  }

  @Test
  void every_repair_that_a_caller_may_do_is_told_plainly_and_says_what_to_watch_for() {
    Telephone telephone = BASE.telephone();
    assertThat(BASE.repairs().values())
        .filteredOn(r -> r.who() == Role.CALLER)
        .hasSizeGreaterThan(10)
        .allSatisfy(
            r -> {
              plain(r.id(), r.steps());
              plain(r.id(), telephone.watch().get(r.id()));
            });
  }

  @Test
  void what_is_done_until_somebody_comes_is_in_plain_words() {
    Map<String, List<String>> texts = BASE.telephone().untilThen();
    assertThat(texts.values().stream().filter(t -> !t.isEmpty())).hasSizeGreaterThan(15);
    texts.forEach(SpokenCardsTest::allPlain);
    assertThat(BASE.telephone().pressing()).isNotEmpty();
    BASE.telephone().pressing().forEach((id, p) -> plain(id, p.untilThen()));
  }

  @Test
  void every_stop_says_what_the_caller_does_and_what_the_desk_does() {
    assertThat(BASE.stops()).hasSizeGreaterThan(6);
    BASE.stops()
        .forEach(
            (id, stop) -> {
              plain(id, stop.now(Role.CALLER));
              assertThat(BASE.telephone().desk().get(id)).as(id).isNotEmpty();
            });
  }

  @Test
  void cautions_that_callers_need_are_in_plain_words() {
    assertThat(BASE.cautionsFor(List.of("moving-leaf")))
        .isNotEmpty()
        .allSatisfy(c -> plain(c.id(), List.of(BASE.telephone().cautions().get(c.id()))));
  }

  private static void plain(String card, List<String> texts) {
    assertThat(texts).as(card).isNotEmpty().doesNotContain("");
    allPlain(card, texts);
  }

  private static void allPlain(String card, List<String> texts) {
    List<String> found = new ArrayList<>();
    texts.forEach(t -> TRADE.matcher(t).results().forEach(r -> found.add(r.group())));
    assertThat(found).as(card + ": " + texts).isEmpty();
  }
}
