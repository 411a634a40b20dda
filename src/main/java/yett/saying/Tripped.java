package yett.saying;

import java.util.regex.Pattern;

/**
 * Whether a line says that the gate's switch in the fuse box went off once more, or with a bang.
 * The same "again" is in "it works again", and to a model of meanings they are nearly one.
 */
public final class Tripped {
  private static final String SWITCH =
      "(?:switch(?:es)?|breakers?|fuses?|rcd|trip(?:s|ped|ping)?|power|electric(?:s|ity)?"
          + "|earth leakage|mains|plug|lever|consumer unit)";

  private static final String GOES_OFF =
      "(?:tripp(?:ed|ing)|trips|(?:gone|went|goes|going|go) off(?! (?:its|the|his|it)\\b)"
          + "|blown|blew|blows|popped out|(?:gone|went|goes)(?= again\\b)"
          + "|(?:jumped|jumps|drops|dropped|knocked|kicked|cut|cuts|flew|flies|came|comes) out"
          + "|(?:dropped|fallen|fell|falls|drops) down|(?:knock|kick)(?:s|ed)(?: itself| it)? off)";

  private static final String AGAIN =
      "(?:again|once more|twice|(?:second|third|another|every|each) time|as soon as"
          + "|straight away|keeps?)";

  /** What else "again" is said of. */
  private static final Pattern RUNS_AGAIN =
      Pattern.compile(
          "\\b(?:works?|working|runs?|running|goes|going|fine|ok|okay|opens?|closes?|on) again\\b");

  private static final Pattern ONCE_MORE =
      Pattern.compile(
          "(?=.*\\b"
              + SWITCH
              + "\\b)(?=.*\\b"
              + GOES_OFF
              + "\\b)(?=.*\\b"
              + AGAIN
              + "\\b)|\\b(?:gone|went|goes) (?:off|down|out) again\\b");

  /** Other things that go off, or were said not to. */
  private static final Pattern OTHER =
      Pattern.compile(
          "\\b(?:alarm|siren|beeper|beeping|lights?|lamps?|bell|not|never|didnt|hasnt|wont|doesnt"
              + "|track|rail|no longer)\\b");

  private static final String AT_THE_SWITCH =
      "(?:switch(?:ed|es)?|breakers?|fuses?|fuse ?box|trip\\w*|plug|socket|consumer unit"
          + "|(?:put|turn\\w*) (?:it|that|the \\w+)? ?(?:back )?on|power|electric\\w*|cupboard)";

  private static final Pattern BANG =
      Pattern.compile(
          "(?=.*\\b"
              + AT_THE_SWITCH
              + "\\b)(?=.*(?:\\b(?:a|big|loud|little|blue|went|almighty)"
              + " (?:bang|pop|flash|crack|puff|sparks?)\\b|\\bspark(?:ed|s|ing)\\b|\\barc(?:ed|ing)\\b))");

  private static final Pattern NO_BANG =
      Pattern.compile(
          "\\b(?:no|not|never|without|didnt|any) (?:a )?(?:bang|pop|flash|crack|puff|spark)");

  /** Said of the time before, where it was just asked whether it had gone off. */
  private static final Pattern BEFORE =
      Pattern.compile(
          "\\b(?:before|again|too|twice|as well|already|(?:last|the other) \\w+|yesterday"
              + "|(?:second|third) time|(?:\\w+ )?times|often|always|every \\w+|ago)\\b");

  private static final Pattern WENT =
      Pattern.compile(
          "\\b(?:gone|went|goes|off|has|did|does|tripped|trips|blew|blown|happened|happens)\\b");

  private static final Pattern NEVER =
      Pattern.compile("\\b(?:no|not|never|nothing|nobody|didnt|hasnt|doesnt|havent)\\b");

  /** How it stands now, not what it does. */
  private static final Pattern DOWN =
      Pattern.compile(
          "\\b(?:switch(?:es)?|breakers?|fuses?|rcd|lever|earth leakage)\\b(?: (?:in|of|at|on) the \\w+(?: \\w+)?)?"
              + "(?: for the gate)? (?:is|are|was|were|has fallen|had fallen|seems?|looks?) (?:down|off|out)\\b");

  private static final Pattern HABIT =
      Pattern.compile(
          "\\b(?:" + AGAIN + "|when|whenever|always|often|if|times|constantly|another)\\b");

  private Tripped() {}

  /** Whether it is only said that it is off, and not that it goes off again and again. */
  static boolean isDown(String line) {
    String plain = PlainWords.of(line);
    return DOWN.matcher(plain).find() && !HABIT.matcher(plain).find();
  }

  /** Whether it went off once more, or goes off again and again. */
  public static boolean again(String line) {
    String plain = RUNS_AGAIN.matcher(PlainWords.of(line)).replaceAll("runs");
    return ONCE_MORE.matcher(plain).find() && !OTHER.matcher(plain).find();
  }

  /** Whether it went off, or was put on, with a bang, a flash or sparks. */
  public static boolean withABang(String line) {
    String plain = PlainWords.of(line);
    return BANG.matcher(plain).find() && !NO_BANG.matcher(plain).find();
  }

  /** Whether a line answers with yes where it was asked whether it had gone off before. */
  public static boolean before(String line) {
    String plain = PlainWords.of(line);
    return !NEVER.matcher(plain).find()
        && WENT.matcher(plain).find()
        && BEFORE.matcher(plain).find();
  }
}
