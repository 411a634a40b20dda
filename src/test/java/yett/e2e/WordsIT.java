package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.Check;

/** Tests the words that every prompt understands. */
class WordsIT {
  private static final Story STORY = Story.of("marker-in-the-gravel");

  /** A case that begins with several questions that need no set-up. */
  private static final Story ASKED_FROM_OUTSIDE = Story.of("spider-in-the-receiver");

  @TempDir private Path home;

  @Test
  void why_belief_help_and_note_leave_the_question_where_it_is() {
    try (Visitor visitor =
        Visitor.at(Story.of("slack-chain-after-winter"), home, "diagnose", "Slipway gate")) {
      Screen dangers = visitor.question();
      assertThat(visitor.say("why").text()).contains("People come first");
      assertThat(visitor.say("unknown").text()).contains("cannot be left out");
      assertThat(visitor.screen().prompt()).isEqualTo(dangers.prompt());

      visitor.until(Screen.Kind.CHECK);
      String prompt = visitor.question().prompt();
      assertThat(visitor.say("why").text())
          .contains("Why this question", "Tells apart:", "Costs:", "Worth:");
      assertThat(visitor.say("belief").text())
          .contains("Probable causes", "where this figure comes from");
      for (String help : new String[] {"help", "?"}) {
        assertThat(pages(visitor, help))
            .contains(
                "why",
                "belief",
                "back",
                "correct",
                "unknown",
                "later",
                "note",
                "danger",
                "hand over",
                "save");
      }
      assertThat(visitor.say("note the post is new").text()).contains("Noted.");
      assertThat(visitor.say("note").prompt()).isEqualTo("Note> ");
      assertThat(visitor.say("the bolts are loose").text()).contains("Noted.");
      assertThat(visitor.say("WHY").text()).contains("Why this question");
      assertThat(visitor.screen().prompt()).isEqualTo(prompt);
    }
  }

  /** What a word shows, with all its pages. */
  private static String pages(Visitor visitor, String word) {
    StringBuilder all = new StringBuilder(visitor.say(word).text());
    while (visitor.screen().prompt().startsWith("Press Enter when you have read this")) {
      all.append(visitor.say("").text());
    }
    return all.toString();
  }

  @Test
  void unknown_later_back_and_correct_change_the_answers() {
    try (Visitor visitor =
        Visitor.at(Story.of("transmitter-battery"), home, "diagnose", "Slipway gate")) {
      visitor.until(Screen.Kind.CHECK);
      String first = visitor.checkId();
      visitor.say("unknown");
      visitor.until(Screen.Kind.CHECK);
      String second = visitor.checkId();
      assertThat(second).as("after \"unknown\"").isNotEqualTo(first);
      visitor.say("later");
      assertThat(visitor.check().map(Check::id))
          .as("after \"later\"")
          .isNotIn(Optional.of(first), Optional.of(second));

      assertThat(visitor.say("back").text()).contains("Taken back: ");
      assertThat(visitor.checkId()).as("after \"back\"").isEqualTo(second);
      visitor.say("back");
      visitor.until(Screen.Kind.CHECK); // another one perhaps, as set-ups stay as they are
      String ask = visitor.check().orElseThrow().ask();
      visitor.answer();
      Screen which = visitor.say("correct");
      assertThat(which.text())
          .contains("Which answer?")
          .doesNotContain("(cannot tell)", "(not now)");
      Screen again = visitor.say(Integer.toString(which.numberOf(ask)));
      assertThat(again.shows(ask)).isTrue();
      assertThat(again.prompt()).endsWith("or Enter to leave it as it was> ");
      assertThat(visitor.say("flurble").prompt()).isEqualTo(again.prompt());
      visitor.say("unknown");
      assertThat(visitor.say("correct").shows(ask + " (cannot tell)")).isTrue();
      visitor.say("");

      visitor.say("not now");
      visitor.pty().enter("quit");
      assertThat(visitor.pty().waitForExit(Visitor.PATIENCE)).isZero();
    }
  }

  @Test
  void what_was_put_off_comes_again_when_little_else_is_left() {
    try (Visitor visitor =
        Visitor.at(Story.of("slack-chain-after-winter"), home, "diagnose", "Slipway gate")) {
      visitor.until(Screen.Kind.CHECK);
      String first = visitor.checkId();
      visitor.say("later");
      List<String> others = new ArrayList<>();
      do {
        others.add(visitor.check().map(Check::id).orElse(visitor.kind().name()));
        switch (visitor.kind()) {
          case CHECK -> visitor.say("unknown");
          case LOOKS -> visitor.say(visitor.allLooks("?"));
          case CAUTIONS, SET_UP, SITE_NEEDED, PROOF, RETEST, GONE -> visitor.answer();
          case REPAIR -> visitor.say("cannot, no spare on the van");
          case STOCK -> visitor.say("1");
          default -> throw new AssertionError(first + " never came again, after " + others);
        }
      } while (others.size() < 150 && !visitor.check().map(Check::id).equals(Optional.of(first)));
      assertThat(visitor.check().map(Check::id)).contains(first);
      assertThat(others).doesNotContain(first).hasSizeGreaterThan(3);
    }
  }

  @Test
  void danger_asks_again_about_dangers_and_a_danger_ends_in_making_safe() {
    try (Visitor visitor = Visitor.at(STORY, home, "diagnose", "Slipway gate")) {
      visitor.until(Screen.Kind.CHECK);
      visitor.say("danger");
      assertThat(visitor.kind()).isEqualTo(Screen.Kind.DANGERS);
      visitor.say(
          Integer.toString(visitor.question().numberOf("The gate leans, hangs or has left")));
      assertThat(visitor.kind()).isEqualTo(Screen.Kind.STOP);
      assertThat(visitor.question().text()).contains("DANGER");
      assertThat(visitor.say("1").text()).contains("People first.");
      visitor.say("done");
      assertThat(visitor.kind()).isEqualTo(Screen.Kind.CLOSE);
      assertThat(visitor.question().text()).contains("stays out of use");
      visitor.pty().enter("close");
      assertThat(visitor.pty().waitForExit(Visitor.PATIENCE)).isZero();
      assertThat(visitor.pty().transcript()).contains("Closed. The record: record ");
    }
  }

  @Test
  void hand_over_asks_why_and_closes_the_case_for_somebody_else() {
    try (Visitor visitor = Visitor.at(ASKED_FROM_OUTSIDE, home, "diagnose", "Slipway gate")) {
      visitor.until(Screen.Kind.CHECK);
      assertThat(visitor.say("hand over").prompt()).startsWith("Why is it handed over?");
      visitor.say("no time left today");
      visitor.until(Screen.Kind.CLOSE); // both supplies locked off, barred and signed
      assertThat(visitor.pty().transcript()).contains("Left out of use");
      assertThat(visitor.question().text()).contains("Hand over", "No time left today.");
      assertThat(visitor.say("back").text()).contains("Taken back: ");
      visitor.until(Screen.Kind.CHECK); // after a look whether the gate stands as it was left
      visitor.pty().enter("save");
      assertThat(visitor.pty().waitForExit(Visitor.PATIENCE)).isZero();
      assertThat(visitor.pty().transcript()).contains("Saved. Go on with: resume ");
    }
  }
}
