package yett.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.UnaryOperator;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.saying.Phrases;

/**
 * Finds cards by meaning: by stems of words and by synonyms, in names, questions, answers, steps
 * and histories.
 */
public final class MeaningIndex {
  /** Least share of the typed words that a card has to account for; considered judgement. */
  private static final double LEAST = 0.5;

  /** From here on a name is so near to a cause that they may be one thing; considered judgement. */
  private static final double CLOSE = 0.6;

  private final Map<String, List<String>> ways = new LinkedHashMap<>();
  private final Phrases phrases;

  public MeaningIndex(RuleBase base) {
    base.causes().values().forEach(this::add);
    base.effects().values().forEach(e -> add(e.id(), e.name()));
    base.checks().values().forEach(this::add);
    base.repairs().values().forEach(this::add);
    for (History history : base.histories().values()) {
      add(history.id(), history.name());
    }
    for (SiteQuestion question : base.siteQuestions().values()) {
      add(question.id(), question.name(), question.ask());
      question.choices().values().forEach(choice -> add(question.id(), choice));
    }
    phrases = new Phrases(ways, base.telephone().spoken().synonyms());
  }

  /** An index of cards of one kind. */
  private <C> MeaningIndex(RuleBase base, Collection<C> cards, BiConsumer<MeaningIndex, C> add) {
    cards.forEach(card -> add.accept(this, card));
    phrases = new Phrases(ways, base.telephone().spoken().synonyms());
  }

  private void add(Cause cause) {
    add(cause.id(), cause.name(), cause.arises()); // what one calls it may be how it came
  }

  private void add(Check check) {
    add(check.id(), check.ask(), check.lay());
    check.outcomes().forEach(o -> add(check.id(), o.text()));
  }

  private void add(Repair repair) {
    add(repair.id(), repair.name());
    repair.steps().forEach(step -> add(repair.id(), step));
  }

  private void add(String id, String... words) {
    List<String> all = ways.computeIfAbsent(id, i -> new ArrayList<>());
    all.add(id.replace('-', ' '));
    for (String some : words) {
      if (!some.isBlank()) {
        all.add(some);
      }
    }
  }

  /** Ids of all cards that account for the typed words, the best first. */
  public List<String> of(String typed) {
    return phrases.hear(typed, ways.size()).stream()
        .map(Phrases.Heard::id)
        .filter(id -> phrases.covers(typed, id) >= LEAST)
        .toList();
  }

  /** Repairs so near to a new one's name that they may be the same, a line each. */
  static List<String> like(String name, RuleBase base) {
    if (base.repairs().isEmpty()) {
      return List.of();
    }
    return new MeaningIndex(base, base.repairs().values(), MeaningIndex::add)
        .close(name, id -> base.repairs().get(id).name(), id -> "name its id instead");
  }

  /** Causes so near to a new one's name that they may be the same, a line each. */
  static List<String> near(String name, RuleBase base) {
    if (base.causes().isEmpty()) {
      return List.of(); // nothing to hear the words by
    }
    return new MeaningIndex(base, base.causes().values(), MeaningIndex::add)
        .close(
            name,
            id -> base.causes().get(id).name(),
            id -> "no new card is needed: knowledge show " + id);
  }

  private List<String> close(String name, UnaryOperator<String> named, UnaryOperator<String> then) {
    return phrases.hear(name, 3).stream()
        .map(Phrases.Heard::id)
        .filter(id -> phrases.covers(name, id) >= CLOSE)
        .map(
            id ->
                "Close to "
                    + id
                    + " ("
                    + named.apply(id)
                    + "). If it is that, "
                    + then.apply(id)
                    + ".")
        .toList();
  }
}
