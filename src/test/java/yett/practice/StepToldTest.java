package yett.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import yett.replay.Replayed;
import yett.testing.Shipped;

/** Steps of a run are told in the words of the cards. */
class StepToldTest {
  private static String told(String kind, String id, String asked, String answer) {
    List<Replayed.Looked> looks =
        kind.equals("look-round")
            ? List.of(new Replayed.Looked("chain-looks", answer, false, Optional.empty()))
            : List.of();
    return new StepTold(Shipped.BASE)
        .words(
            new Replayed.Taken(
                1, kind, id, asked, null, answer, false, Optional.empty(), Map.of(), 1, looks));
  }

  @Test
  void no_step_shows_an_id() {
    String looks = Shipped.BASE.checks().get("chain-looks").outcomes().get(1).text();
    String id = Shipped.BASE.checks().get("chain-looks").outcomes().get(1).id();
    assertThat(told("look-round", "along-chain", "Along the chain", id))
        .startsWith("Along the chain: ")
        .endsWith(" - " + looks);
    assertThat(told("check", "chain-looks", "How?", id)).isEqualTo("How? " + looks);
    assertThat(told("check", "chain-sag", "How far?", "-19 mm")).isEqualTo("How far? -19 mm");
    assertThat(told("retest", "retest", "Does it run?", "cured")).isEqualTo("Does it run? yes");
    assertThat(told("repair", "x", "Take up the chain", "done"))
        .isEqualTo("Mend: Take up the chain");
  }

  @Test
  void no_reason_shows_an_id() {
    Replayed.Why why =
        new Replayed.Why(
            "confirms \"slacken-chain\"; \"chain-looks\" came second, \"Ever\"",
            Optional.empty(),
            Optional.empty(),
            List.of());
    assertThat(new StepTold(Shipped.BASE).reason(why))
        .isEqualTo(
            "confirms \""
                + Shipped.BASE.repairs().get("slacken-chain").name()
                + "\"; \""
                + Shipped.BASE.checks().get("chain-looks").ask()
                + "\" came second, \"Ever\"");
  }
}
