package yett.command.diagnose.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;

/** What was typed at a round of looks so far, by position of the look. */
final class LooksSaid {
  /** Empty where a look is out of the ordinary and nobody has said how. */
  private final Map<Integer, Optional<Answer>> answers = new TreeMap<>();

  /** Words that say more than the answer; they become remarks. */
  private final Map<Integer, String> words = new TreeMap<>();

  /** Looks that were named in a way that could not be read. */
  private final Set<Integer> unread = new TreeSet<>();

  /** Looks that were named, readably or not; nothing is taken for granted of them. */
  private final Set<Integer> named = new TreeSet<>();

  private final List<String> strays = new ArrayList<>();

  /** The columns, such as opening, in which looks are out of the ordinary, if that was said. */
  private final Map<Integer, Set<String>> columns = new TreeMap<>();

  void add(RoundLine.Heard heard) {
    answers.putAll(heard.said());
    unread.removeAll(heard.said().keySet());
    unread.addAll(heard.unread());
    named.addAll(heard.said().keySet());
    named.addAll(heard.unread());
    heard
        .remarks()
        .forEach((i, text) -> words.merge(i, text, (a, b) -> a.equals(b) ? a : a + "; " + b));
    strays.addAll(heard.strays());
    heard.said().keySet().forEach(columns::remove);
    columns.putAll(heard.columns());
  }

  void put(int look, Answer answer) {
    answers.put(look, Optional.of(answer));
    unread.remove(look);
  }

  /** Keeps a look open that was named earlier and not answered. */
  void leaveOpen(int look) {
    unread.add(look);
    named.add(look);
  }

  Map<Integer, Optional<Answer>> answers() {
    return answers;
  }

  Optional<Answer> answer(int look) {
    return isUnread(look) ? Optional.empty() : answers.getOrDefault(look, Optional.empty());
  }

  Optional<String> words(int look) {
    return Optional.ofNullable(words.get(look));
  }

  boolean isUnread(int look) {
    return unread.contains(look);
  }

  /** Whether the look was named as out of the ordinary, readably or not. */
  boolean isTicked(int look) {
    return isUnread(look) || answers.containsKey(look);
  }

  /** Positions of the looks that were named, with or without an answer. */
  Set<Integer> named() {
    return named;
  }

  /** Forgets what was typed; what was named stays open, so that nothing of it is taken as usual. */
  void takeBack() {
    unread.addAll(named);
    answers.clear();
    words.clear();
    strays.clear();
    columns.clear();
  }

  /** The columns of a look that are out of the ordinary; none if they were not told apart. */
  Set<String> columns(int look) {
    return columns.getOrDefault(look, Set.of());
  }

  /** The words, as remarks on their looks; those about none of the looks as notes. */
  List<Event> remarks(List<Check> looks) {
    List<Event> remarks = new ArrayList<>();
    words.forEach((i, text) -> remarks.add(new Event.Noted(text, Optional.of(looks.get(i).id()))));
    strays.forEach(text -> remarks.add(new Event.Noted(text)));
    return remarks;
  }
}
