package yett.command.diagnose.look;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.command.common.HeardAnswer;
import yett.interview.event.Answer;
import yett.knowledge.Check;

/**
 * Reads a line typed at a round of looks. {@code 3} is out of the ordinary, {@code 3b} and {@code 3
 * rusty} also say how, {@code ?3} cannot be told, and {@code -3} was not looked at. Words without a
 * number answer the look that has such an outcome. Commas separate the parts where they would run
 * together.
 */
final class RoundLine {
  private static final Pattern NUMBER =
      Pattern.compile("([?-]?)(\\d{1,3})(?:-(\\d{1,3}))?([a-z]*)");

  private final List<Check> looks;
  private final Map<Integer, Optional<Answer>> said = new LinkedHashMap<>();
  private final List<String> complaints = new ArrayList<>();
  private final Map<Integer, String> remarks = new LinkedHashMap<>();
  private final Set<Integer> unread = new TreeSet<>();
  private final List<String> strays = new ArrayList<>();
  private Map<Integer, Optional<Answer>> part = Map.of();
  private Optional<Integer> look = Optional.empty();

  /** The columns of looks that were named apart, such as opening: where they are unusual. */
  private final Map<Integer, Set<String>> columns = new LinkedHashMap<>();

  /** The look that this part names last, and that of the part before: its words may go on. */
  private Optional<Integer> named = Optional.empty();

  private Optional<Integer> earlier = Optional.empty();

  private RoundLine(List<Check> looks) {
    this.looks = looks;
  }

  /**
   * @param said by position of the look; empty where it is out of the ordinary and the line does
   *     not say how
   * @param complaints about the parts of the line that could not be read; these parts are ignored
   * @param remarks words about a look that say more than its answer, by position; also words that
   *     match none of its answers, or several
   * @param unread positions of looks that the parts that could not be read named; nothing is taken
   *     for granted of them
   * @param strays words that belong to none of the looks
   * @param columns of looks with two columns, those that are out of the ordinary, by position;
   *     missing if the line did not tell them apart
   */
  record Heard(
      Map<Integer, Optional<Answer>> said,
      List<String> complaints,
      Map<Integer, String> remarks,
      Set<Integer> unread,
      List<String> strays,
      Map<Integer, Set<String>> columns) {}

  static Heard read(List<Check> looks, String line) {
    RoundLine reader = new RoundLine(looks);
    String text =
        line.toLowerCase(Locale.ROOT)
            .replace('\u2013', '-')
            .replace('\u2212', '-')
            .replaceAll("([?-])\\s+(?=\\d)", "$1")
            .replaceAll("(\\d)\\s+(?=[a-z]?/[a-z]?(?:\\s|$))", "$1");
    for (String part : text.split("[,;]")) {
      Optional<LookColumns.Only> only = LookColumns.only(looks, part.strip());
      only.ifPresent(o -> reader.columns.put(o.look(), Set.of(o.column())));
      reader.part(only.map(LookColumns.Only::rest).orElse(part.strip()));
    }
    return new Heard(
        reader.said,
        List.copyOf(reader.complaints),
        reader.remarks,
        reader.unread,
        List.copyOf(reader.strays),
        reader.columns);
  }

  /** Reads one part of the line; it counts whole or not at all. */
  private void part(String text) {
    if (text.isEmpty()) {
      return;
    }
    part = new LinkedHashMap<>();
    look = Optional.empty();
    named = Optional.empty();
    List<String> words = new ArrayList<>();
    Optional<String> wrong = Optional.empty();
    for (String word : text.split("\\s+")) {
      Optional<LookColumns> apart = LookColumns.both(looks, word);
      if (apart.isPresent()) {
        wrong = wrong.or(() -> words(words)).or(() -> apart(apart.get()));
        continue;
      }
      Matcher number = NUMBER.matcher(word);
      if (number.matches()
          && LookTicks.areAnswers(looks, Integer.parseInt(number.group(2)), number.group(4))) {
        wrong = wrong.or(() -> words(words)).or(() -> number(number));
      } else {
        words.add(word);
      }
    }
    wrong = wrong.or(() -> words(words));
    for (Map.Entry<Integer, Optional<Answer>> one : part.entrySet()) {
      wrong = wrong.or(() -> LookTicks.add(looks, said, one.getKey(), one.getValue()));
    }
    if (wrong.isEmpty()) {
      unread.removeAll(part.keySet());
    } else {
      complaints.add(wrong.get());
      unread.addAll(part.keySet());
    }
    earlier = wrong.isEmpty() && part.size() == 1 ? named : Optional.empty();
  }

  /** Takes an answer for each column; both are kept if they differ in kind. */
  private Optional<String> apart(LookColumns said) {
    if (said.complaint().isPresent()) {
      return said.complaint();
    }
    look = Optional.empty();
    named = Optional.of(said.look());
    part.put(said.look(), said.answer());
    columns.put(said.look(), said.unusual());
    said.remark().ifPresent(r -> remarks.put(said.look(), r));
    return Optional.empty();
  }

  private Optional<String> number(Matcher number) {
    String sign = number.group(1);
    String letter = number.group(4);
    int from = Integer.parseInt(number.group(2));
    int to = number.group(3) == null ? from : Integer.parseInt(number.group(3));
    if (from < 1 || to > looks.size() || to < from || !letter.isEmpty() && to > from) {
      return Optional.of(
          "\""
              + number.group()
              + "\" is not understood: the looks are numbered 1 to "
              + looks.size()
              + ".");
    }
    if (!letter.isEmpty()) {
      look = Optional.empty();
      named = Optional.of(from - 1);
      part.putIfAbsent(from - 1, Optional.empty());
      return sign.isEmpty()
          ? letters(from - 1, letter)
          : Optional.of("\"" + number.group() + "\" is not understood: type " + sign + from + ".");
    }
    for (int i = from - 1; i < to; i++) {
      part.put(
          i,
          switch (sign) {
            case "?" -> Optional.of(new Answer.CannotTell());
            case "-" -> Optional.of(new Answer.NotNow());
            default -> Optional.empty();
          });
    }
    look = sign.isEmpty() && from == to ? Optional.of(from - 1) : Optional.empty();
    named = look;
    return Optional.empty();
  }

  private Optional<String> letters(int position, String letter) {
    HeardAnswer heard = LookAnswers.of(looks.get(position), letter);
    if (LookTicks.letters(looks.get(position), letter).isEmpty()) {
      return Optional.of(
          "\""
              + (position + 1)
              + letter
              + "\" is not understood: "
              + LookAnswers.lettered(looks.get(position)));
    }
    return LookTicks.add(looks, part, position, heard.answer());
  }

  /** Reads words: after a number those of its look, else of the look that has such an outcome. */
  private Optional<String> words(List<String> words) {
    if (words.isEmpty()) {
      return Optional.empty();
    }
    String text = String.join(" ", words);
    words.clear();
    Optional<Integer> position = look;
    look = Optional.empty();
    if (position.isEmpty()) {
      return unnumbered(text);
    }
    Check check = looks.get(position.get());
    HeardAnswer heard = LookAnswers.of(check, text);
    boolean whole =
        !LookTicks.letters(check, text).isEmpty()
            || LookAnswers.isWhole(check, heard.answer(), text);
    part.put(
        position.get(), heard.answer().filter(a -> whole || !LookAnswers.isOrdinary(check, a)));
    if (heard.answer().isEmpty() && text.matches("[a-z]")) { // a slip, not a remark
      return Optional.of((position.get() + 1) + ": " + heard.complaint());
    }
    if (!whole) {
      remarks.put(position.get(), text);
    }
    return Optional.empty();
  }

  /** Reads words that answer a look by themselves, or go on with those of the part before. */
  private Optional<String> unnumbered(String text) {
    if (LookTicks.withoutAnd(text).isEmpty()) {
      return Optional.empty(); // between two numbers
    }
    Optional<Integer> before = named.or(() -> earlier);
    Optional<Answer> further = before.flatMap(i -> LookTicks.further(looks.get(i), text));
    SaidOfLooks found = SaidOfLooks.hear(looks, LookTicks.withoutAnd(text));
    if (further.isPresent() && (named.isPresent() || found.answer().isEmpty())) {
      named = before;
      return LookTicks.add(looks, part, before.get(), further);
    }
    if (found.answer().isPresent()) {
      return LookTicks.add(looks, part, found.look(), found.answer());
    }
    if (found.complaint().isPresent() && earlier.isPresent()) {
      named = earlier;
      part.put(named.get(), said.get(named.get()));
      remarks.merge(named.get(), text, (one, more) -> one + ", " + more);
      return Optional.empty();
    }
    found.complaint().ifPresent(c -> strays.add(text));
    return found.complaint();
  }
}
