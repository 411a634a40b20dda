package yett.command.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import yett.console.Block;
import yett.interview.Answer;
import yett.interview.Event;
import yett.interview.Occasion;
import yett.interview.Purpose;
import yett.interview.Step;
import yett.knowledge.Caution;
import yett.testing.Shipped;

/** Cautions are read once in each state of the work; afterwards one line says that they hold. */
class CautionViewsTest {
  private static final List<Caution> RUN =
      Shipped.BASE.cautionsFor(List.of("moving-leaf", "traffic"));

  private static final String REPAIR = "tighten-chain";

  private final Set<String> inForce = new HashSet<>();
  private final CautionViews views = new CautionViews(Shipped.BASE, () -> inForce);

  /** A repair with these cautions; only the word that it was done says that they were read. */
  private static Step.Mend repair(List<Caution> cautions) {
    return new Step.Mend(
        Shipped.BASE.repairs().get(REPAIR),
        cautions,
        Optional.empty(),
        Occasion.of(Occasion.Kind.WORTH));
  }

  private void read(List<Caution> cautions) {
    views.written(cautions);
    views.heed(repair(cautions), new Event.Repaired(REPAIR, true));
  }

  @Test
  void once_they_were_read_one_line_is_left() {
    assertThat(views.written(RUN)).isEqualTo(CautionViews.full(RUN)).hasSizeGreaterThan(2);
    read(RUN);
    assertThat(views.written(RUN))
        .singleElement()
        .extracting(Block::toString)
        .asString()
        .contains("What was said still holds: moving leaf, traffic. ? shows it in full.");
  }

  /** Who typed back, told something or corrected an answer there may not have read them. */
  @Test
  void shown_is_not_read() {
    views.written(RUN);
    views.heed(repair(RUN), new Event.Retracted(3));
    views.heed(repair(RUN), new Event.Answered("chain-looks", new Answer.CannotTell()));
    assertThat(views.written(RUN)).isEqualTo(CautionViews.full(RUN));
  }

  @Test
  void where_nothing_shows_them_again_nothing_is_promised() {
    CautionViews practice = new CautionViews(Shipped.BASE);
    practice.written(RUN);
    assertThat(practice.written(RUN).toString()).contains("still holds").doesNotContain("?");
  }

  @Test
  void what_was_not_read_yet_comes_in_full_beside_it() {
    read(Shipped.BASE.cautionsFor(List.of("traffic")));
    assertThat(views.written(RUN)).hasSize(RUN.size());
  }

  /** A leaf that is watched, then one beside an open cabinet. */
  @Test
  void in_another_state_of_the_work_they_are_read_again() {
    Step.Enter enter =
        new Step.Enter(
            Shipped.BASE.setUps().get("gate-running"), RUN, new Purpose(Purpose.Kind.TRIAL, ""));
    views.entering(enter);
    views.heed(enter, enter.done());
    inForce.add("gate-running");
    assertThat(views.written(RUN)).hasSize(1);
    inForce.add("cover-off");
    assertThat(views.written(RUN)).isEqualTo(CautionViews.full(RUN));
  }
}
