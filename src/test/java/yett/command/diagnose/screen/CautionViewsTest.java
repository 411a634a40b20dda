package yett.command.diagnose.screen;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import yett.console.Block;
import yett.console.Text;
import yett.interview.step.Purpose;
import yett.interview.step.Step;
import yett.knowledge.Caution;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.knowledge.SetUp;
import yett.testing.Shipped;

/** Cautions are read once in each state of the work; afterwards one line says that they hold. */
class CautionViewsTest {
  private static final List<Caution> RUN =
      Shipped.BASE.cautionsFor(List.of("moving-leaf", "traffic"));

  private final Set<String> inForce = new HashSet<>();
  private final CautionViews views = new CautionViews(Shipped.BASE, () -> inForce);

  @Test
  void the_second_time_one_line_is_left() {
    assertThat(views.written(RUN)).isEqualTo(CautionViews.full(RUN)).hasSizeGreaterThan(2);
    views.read();
    assertThat(views.written(RUN))
        .singleElement()
        .extracting(Block::toString)
        .asString()
        .contains("What was said still holds: moving leaf, traffic. ? shows it in full.");
  }

  @Test
  void where_nothing_shows_them_again_nothing_is_promised() {
    CautionViews practice = new CautionViews(Shipped.BASE);
    practice.written(RUN);
    assertThat(practice.written(RUN).toString()).contains("still holds").doesNotContain("?");
  }

  @Test
  void what_was_not_read_yet_comes_in_full_beside_it() {
    views.written(Shipped.BASE.cautionsFor(List.of("traffic")));
    views.read();
    assertThat(views.written(RUN)).hasSize(RUN.size());
  }

  /** A leaf that is watched, then one beside an open cabinet. */
  @Test
  void in_another_state_of_the_work_they_are_read_again() {
    views.entering(
        new Step.Enter(
            Shipped.BASE.setUps().get("gate-running"), RUN, new Purpose(Purpose.Kind.TRIAL, "")));
    views.read();
    inForce.add("gate-running");
    assertThat(views.written(RUN)).hasSize(1);
    inForce.add("cover-off");
    assertThat(views.written(RUN)).isEqualTo(CautionViews.full(RUN));
  }

  /** Whoever typed "back" at them comes upon them again as if for the first time. */
  @Test
  void what_nobody_went_on_past_comes_in_full_again() {
    views.written(RUN);
    views.begin();
    assertThat(views.written(RUN)).isEqualTo(CautionViews.full(RUN));
    views.read();
    assertThat(views.written(RUN)).hasSize(1);
  }

  /** The second thing that is asked in an open cabinet has still mains beside it. */
  @Test
  void what_was_said_of_the_state_of_the_work_is_named_beside_what_has_hazards_of_its_own() {
    SetUp coverOff = Shipped.BASE.setUps().get("cover-off");
    views.entering(
        new Step.Enter(
            coverOff,
            Shipped.BASE.cautionsFor(coverOff.hazards()),
            new Purpose(Purpose.Kind.CHECK, "block-labels")));
    views.read();
    inForce.add("cover-off");
    assertThat(text(views.written(Shipped.BASE.cautionsFor(List.of("battery")))))
        .containsExactly(
            "DANGER What was said still holds: battery, mains, solar panel. ? shows it in full.");
    List<Caution> traffic = Shipped.BASE.cautionsFor(List.of("traffic"));
    assertThat(text(views.written(traffic)))
        .as("the gravest first")
        .first()
        .asString()
        .startsWith("DANGER What was said still holds: mains, solar panel, battery.");
  }

  private static List<String> text(List<Block> blocks) {
    return blocks.stream()
        .map(b -> ((Block.Signal) b).word() + " " + words(((Block.Signal) b).text()))
        .toList();
  }

  private static String words(Text text) {
    return text.spans().stream().map(Text.Span::words).collect(Collectors.joining());
  }

  /** It alone says what to do at terminals that are live. */
  @Test
  void whoever_measures_live_mains_is_told_so_in_full() {
    List<Check> live =
        Shipped.BASE.checks().values().stream()
            .filter(c -> c.hazards().contains("live-mains"))
            .toList();
    assertThat(live)
        .extracting(Check::id)
        .contains("mains-at-terminals", "selector-margin", "supply-under-load", "panel-voltage");
    assertThat(live)
        .allSatisfy(
            c -> {
              assertThat(c.who()).isEqualTo(Role.ELECTRICIAN);
              assertThat(c.hazards()).doesNotContain("mains");
              assertThat(text(views.written(Shipped.BASE.cautionsFor(c.hazards()))))
                  .anyMatch(t -> t.startsWith("DANGER") && t.contains("put the guard back"));
            });
  }
}
