package yett.saying;

import java.util.Arrays;
import java.util.regex.Pattern;

/**
 * Whether a line lets hear that a child is on the telephone, or that a grown-up has come to it.
 * Both are only asked about.
 */
public final class OnTheLine {
  private static final String YEARS =
      "(?:[4-9]|1[0-5]|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen)";

  private static final String PARENT =
      "(?:mum|mummy|mom|mommy|mam|mama|dad|daddy|papa|gran|granny|grandma|grandad|grandpa|parents"
          + "|mother|father)";

  private static final Pattern CHILD =
      Pattern.compile(
          String.join(
              "|",
              "\\b(?:im|i am)(?: (?:only|just|nearly|almost))? "
                  + YEARS
                  + "(?=$|(?: and a half)?(?: years? old\\b| and\\b| but\\b))",
              "\\b(?:im|i am)(?: (?:only|just))? a (?:child|kid|(?:little |small )?(?:boy|girl))\\b",
              "\\b(?:im|i am) in (?:year|class|grade) \\w+",
              "\\b"
                  + PARENT
                  + "(?:s| is| are|re| has| have|ve)? (?:just )?(?:not (?:in|here|home"
                  + "|there|back)|isnt (?:in|here|home|there|back)|arent (?:in|here|home|there|back)"
                  + "|out|away|at work|asleep|sleeping|gone|shopping|at the shops?)\\b",
              "\\b(?:mummy|mommy|daddy)\\b",
              "\\b(?:home alone|alone at home|all by myself|by myself at home|on my own at home"
                  + "|no grown ?ups? (?:is |are )?(?:here|there|home|in))\\b",
              "^(?:its |it is |this is |there is |theres )?an? (?:child|kid|boy|girl)"
                  + "(?: is)?(?: (?:ringing|calling|here|on the (?:phone|line|telephone)))?$"));

  private static final String GROWN_UP =
      "(?:"
          + PARENT
          + "|grown ?up|adult|aunt(?:ie|y)?|uncle|teacher|neighbour|nanny|husband|wife"
          + "|parent|he|she|caretaker|somebody|someone|lady|man|woman)";

  private static final Pattern GROWN_UP_CAME =
      Pattern.compile(
          "\\b"
              + GROWN_UP
              + "(?:s| is| has)? (?:now |just |back )?(?:here|back|home|come|came|coming"
              + "|on the (?:phone|line|telephone)|there|listening)\\b"
              + "|\\b(?:heres|here is|here comes|pass(?:ing)? (?:you|it|the phone)|give you|giving you"
              + "|speak(?:ing)? to|talk(?:ing)? to|fetched|got)\\b.*\\b"
              + GROWN_UP
              + "\\b|^(?:an? )?(?:grown ?up|adult)(?: now| here)?$"
              + "|\\b(?:im|i am|this is) (?:his|her|the|their) (?:mum|mom|dad|mother|father"
              + "|grandmother|grandfather|neighbour|aunt|uncle|teacher)\\b");

  private OnTheLine() {}

  /** Whether the words may be a child's who has no grown-up there. */
  public static boolean mayBeChild(String line) {
    return CHILD.matcher(PlainWords.of(line)).find()
        || Arrays.stream(line.split("[,;.!?]"))
            .anyMatch(part -> CHILD.matcher(PlainWords.of(part)).find());
  }

  /** Whether the words may say that a grown-up is there now. */
  public static boolean mayBeGrownUp(String line) {
    String plain = PlainWords.of(line);
    return GROWN_UP_CAME.matcher(plain).find() && !CHILD.matcher(plain).find();
  }
}
