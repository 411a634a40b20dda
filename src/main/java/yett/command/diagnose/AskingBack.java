package yett.command.diagnose;

import java.util.List;
import yett.console.Block;
import yett.saying.DangerSayings.Danger;
import yett.wording.Wording;

/**
 * Asks what words typed at the list of dangers mean. Words alone never count as an answer there.
 */
record AskingBack(Sitting sitting) {

  void ask(List<Danger> heard, List<Danger> dangers) {
    if (heard.isEmpty()) {
      sitting.say(
          "That does not say which of these applies, or that none does; your words are"
              + " kept. Type the numbers that apply; 0 only if none does; unknown 2 if you cannot"
              + " tell about number 2.");
      return;
    }
    sitting.show(
        Block.paragraph("That may mean danger:"),
        new Block.Numbered(
            heard.stream()
                .map(
                    d ->
                        Block.item(
                            Integer.toString(dangers.indexOf(d) + 1),
                            Wording.capital(d.outcome().text())))
                .toList()),
        Block.paragraph(
            (heard.size() == 1 ? "Is this true? yes" : "Are all of these true? yes")
                + ", or the numbers of all that apply; 0 only if nothing on the whole list does."));
  }

  /**
   * Whether the person denies all of these dangers. The word "no" has to be typed, so that a single
   * wrong key does not dismiss what somebody said.
   */
  boolean isDenied(List<Danger> heard) {
    sitting.show(
        Block.paragraph("What was said may mean:"),
        Block.numbered(heard.stream().map(d -> Wording.capital(d.outcome().text())).toList()));
    String line = sitting.line("Type no if none of it is true; anything else asks again");
    return line.strip().equalsIgnoreCase("no");
  }
}
