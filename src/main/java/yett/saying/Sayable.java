package yett.saying;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.Check;
import yett.knowledge.Effect;
import yett.knowledge.History;
import yett.knowledge.Pressing;
import yett.knowledge.RuleBase;
import yett.knowledge.Spoken;

/**
 * Collects everything that a person can say about a gate, each thing with the wordings on cards.
 */
final class Sayable {
  private final Spoken spoken;
  private final Map<Thing, Ways> things = new LinkedHashMap<>();

  /**
   * The wordings of a thing.
   *
   * @param words for the index of words: also names and ids, which nobody says in a sentence
   * @param sentences that mean the thing, each by itself
   */
  record Ways(List<String> words, List<String> sentences) {
    Ways {
      words = words.stream().filter(w -> !w.isBlank()).toList();
      sentences = sentences.stream().filter(s -> !s.isBlank()).toList();
    }
  }

  private Sayable(RuleBase base) {
    this.spoken = base.telephone().spoken();
  }

  static Map<Thing, Ways> of(RuleBase base) {
    Sayable sayable = new Sayable(base);
    base.checks().values().forEach(sayable::check);
    base.complaints().forEach(sayable::complaint);
    base.effects().values().forEach(sayable::effect);
    base.histories().values().forEach(sayable::history);
    base.telephone().pressing().values().forEach(sayable::pressing);
    sayable.nothing();
    return sayable.things;
  }

  private void nothing() {
    Map<Boolean, List<String>> denies =
        spoken.nothing().stream().collect(Collectors.partitioningBy(Negation::in));
    things.put(Thing.TALK, new Ways(denies.get(false), denies.get(false)));
    things.put(Thing.DENIAL, new Ways(denies.get(true), denies.get(true)));
  }

  private void add(Thing.Kind kind, String card, String outcome, Ways ways) {
    things.put(new Thing(kind, card, outcome), ways);
  }

  private void check(Check check) {
    if (check.danger()) {
      check.outcomes().stream().skip(1).forEach(o -> danger(check, o));
    } else if (check.kind() == Check.Kind.CHECK) {
      if (check.measured()) {
        // Found by the name of the measured quantity; a reading has to follow.
        List<String> names = List.of(check.ask(), check.lay(), spaced(check.id()));
        add(Thing.Kind.READING, check.id(), "", new Ways(names, names));
      } else {
        check.outcomes().forEach(o -> outcome(check, o));
      }
    }
  }

  private void danger(Check check, Check.Outcome outcome) {
    List<String> ways = with(spoken.of(check, outcome), outcome.text());
    add(Thing.Kind.DANGER, check.id(), outcome.id(), new Ways(ways, ways));
  }

  /**
   * Adds an outcome of a check. The ordinary outcome is added only if its card has wordings,
   * because nobody mentions unasked that something is as usual.
   */
  private void outcome(Check check, Check.Outcome outcome) {
    String name = spaced(check.id());
    List<String> words =
        with(
            spoken.of(check, outcome),
            outcome.text(),
            name + " " + spaced(outcome.id()),
            check.ask() + " " + outcome.text());
    List<String> sentences = spoken.of(check, outcome);
    if (check.indexOf(outcome.id()) > 0) {
      sentences =
          with(
              sentences, check.ask() + " " + outcome.text(), check.spoken() + " " + outcome.text());
    }
    add(Thing.Kind.OUTCOME, check.id(), outcome.id(), new Ways(words, sentences));
  }

  private void complaint(Check complaint) {
    List<String> ways =
        with(spoken.of("complaint", complaint.id()), complaint.ask(), complaint.lay());
    add(Thing.Kind.COMPLAINT, complaint.id(), "", new Ways(ways, ways));
  }

  private void effect(Effect effect) {
    List<String> ways = with(spoken.of("effect", effect.id()), effect.name());
    add(Thing.Kind.EFFECT, effect.id(), "", new Ways(ways, ways));
  }

  private void history(History history) {
    List<String> ways = with(spoken.of("history", history.id()), history.name());
    add(Thing.Kind.HISTORY, history.id(), "", new Ways(with(ways, spaced(history.id())), ways));
  }

  private void pressing(Pressing pressing) {
    List<String> ways = with(spoken.of("pressing", pressing.id()), pressing.said(), pressing.ask());
    add(Thing.Kind.PRESSING, pressing.id(), "", new Ways(ways, ways));
  }

  private static List<String> with(List<String> some, String... more) {
    return Stream.concat(Stream.of(more), some.stream()).distinct().toList();
  }

  private static String spaced(String id) {
    return id.replace('-', ' ');
  }

  /** All sentences whose meaning is needed. */
  static List<String> sentences(RuleBase base) {
    List<String> all = new ArrayList<>();
    of(base).values().forEach(w -> all.addAll(w.sentences()));
    return all.stream().distinct().toList();
  }
}
