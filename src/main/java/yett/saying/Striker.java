package yett.saying;

import java.util.regex.Pattern;

/**
 * Who runs into whom, by what a clause says. To a model of meanings "a van hit the gate" and "the
 * gate hit a van" are nearly one.
 */
enum Striker {
  GATE,
  SOMETHING_ELSE,
  UNSAID;

  private static final String HITS =
      "(?:(?:hit(?:s|ting)?|str(?:uck|ikes)|bump(?:s|ed)?|ram(?:s|med)|clip(?:s|ped)"
          + "|crash(?:es|ed)?|smash(?:es|ed)|knock(?:s|ed)|dent(?:s|ed)|scrap(?:es|ed)"
          + "|squashed|crushed)"
          + "|(?:ran|runs?|drove|drives?|driven|back(?:s|ed)|revers(?:es|ed)|rolled|slid)"
          + " (?:straight |right |back )?(?:into|against|over|onto))";

  private static final String OUR_GATE = "by (?:it|(?:the|your|our) gate)\\b";

  private static final String PART =
      "(?:gates?|leaf|posts?|pole|pillar|fence|motor(?: box)?|box|operator)";

  private static final Pattern GATE_HITS =
      Pattern.compile(
          "(?i)\\b(?:it|gate|leaf)(?:['’]s)?(?: (?:just|has|had|also|only|nearly|almost|then"
              + ("|really|again|and|came|went|across|on|back|suddenly|straight|right)){0,3} "
                  + HITS)
              + ("\\b|\\b" + HITS + "\\b.{0,12} " + OUR_GATE));
  private static final Pattern GATE_IS_HIT =
      Pattern.compile(
          "(?i)\\b"
              + HITS
              + "(?: (?:up|right|straight|hard|into|against|in|on|over|along|the|an?|your|our|my"
              + ("|one|of|side|corner|end))* (?:" + PART + "|it)\\b|\\b(?:" + PART + "|it)")
              + ("(?: \\w+)? (?:was|got|been|were|is) " + HITS + "\\b.{0,12} by\\b"));

  static Striker in(String clause) {
    boolean gate = GATE_HITS.matcher(clause).find();
    boolean other = GATE_IS_HIT.matcher(clause).find();
    return gate == other ? UNSAID : gate ? GATE : SOMETHING_ELSE;
  }
}
