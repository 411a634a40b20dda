package yett.practice;

import java.util.List;
import yett.knowledge.Caution;
import yett.knowledge.SetUp;

/**
 * Why something may not be done at present.
 *
 * @param slip whether it would have been dangerous
 * @param cautions the hazards, to be read before it is tried again
 * @param leave set-ups to be left first
 * @param enter set-ups to be entered first
 */
public record Refusal(
    String why, boolean slip, List<Caution> cautions, List<SetUp> leave, List<SetUp> enter) {

  static Refusal harmless(String why) {
    return new Refusal(why, false, List.of(), List.of(), List.of());
  }

  static Refusal dangerous(String why, List<Caution> cautions) {
    return new Refusal(why, true, cautions, List.of(), List.of());
  }
}
