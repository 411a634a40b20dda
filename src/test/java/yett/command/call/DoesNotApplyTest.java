package yett.command.call;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import yett.command.diagnose.CallersCase;
import yett.dispatch.DispatchSheet;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.testing.Shipped;

/** A question without sense at this gate counts for nothing and is not asked again. */
class DoesNotApplyTest extends CallersCase {
  @Test
  void it_is_kept_and_the_next_question_comes() {
    typed.type("it is dead", "0", "Ina Teal", "1", "0", "0", "n/a");
    Event.Answered answered =
        typed.stored().stream()
            .filter(Event.Answered.class::isInstance)
            .map(Event.Answered.class::cast)
            .reduce((a, b) -> b)
            .orElseThrow();
    assertThat(answered.answer()).isEqualTo(new Answer.DoesNotApply());
    String after = typed.screen().substring(typed.screen().lastIndexOf("Question 2"));
    assertThat(after).doesNotContain(Shipped.BASE.checks().get(answered.check()).lay());
    assertThat(sheet().asked())
        .filteredOn(a -> a.check().equals(answered.check()))
        .extracting(DispatchSheet.Asked::answer)
        .containsExactly("does not apply");
  }

  /** Nobody is out of danger by it. */
  @Test
  void no_danger_is_left_out_by_it() {
    typed.type("it is dead", "does not apply", "n/a");
    assertThat(typed.stored()).noneMatch(e -> e.toString().contains("DoesNotApply"));
    assertThat(typed.screen()).doesNotContain("Who is calling?");
  }
}
