package yett.knowledge;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import yett.knowledge.CardFile.Document;

/**
 * The cards that protect people: stops, dangers, cautions, set-ups, proofs, and the cards named in
 * rules that stop or forbid something. An add-on can add to them but change none. Another card that
 * it replaces has to stay as strict as it was.
 */
final class Protection {
  private static final Set<String> KINDS = Set.of("stop", "caution", "set-up", "proof");
  private static final Set<String> NAMED_IN_RULES = Set.of("check", "complaint", "history", "site");

  private final List<RuleText> rules;
  private final Set<String> named = new HashSet<>();
  private final Set<String> followUps = new HashSet<>();

  /**
   * @param cards of the rule base
   */
  Protection(List<RuleText> rules, Collection<Document> cards) {
    this.rules = rules;
    rules.stream().filter(RuleText::stops).forEach(r -> named.addAll(r.conditions()));
    cards.forEach(c -> followUps.addAll(new Strictness(c).texts("entails")));
    cards.stream().filter(this::isOfItself).forEach(c -> named.addAll(asks(c)));
    // A site question that is no longer asked would leave its rules without an answer.
    List<Document> questions = cards.stream().filter(c -> kind(c).equals("site")).toList();
    for (int before = -1; before < named.size(); ) {
      before = named.size();
      questions.stream().filter(c -> named.contains(id(c))).forEach(c -> named.addAll(asks(c)));
    }
  }

  /** Ids of the checks and other cards that rules refer to which stop or forbid something. */
  Set<String> named() {
    return named;
  }

  boolean holds(Document card) {
    return isOfItself(card) || NAMED_IN_RULES.contains(kind(card)) && named.contains(id(card));
  }

  /** Whether an add-on may replace this card with one as strict, but not switch it off. */
  boolean staysOn(Document card) {
    return holds(card)
        || followUps.contains(id(card))
        || new Strictness(card).urgency("urgency") == Pressing.Urgency.AT_ONCE.ordinal();
  }

  private boolean isOfItself(Document card) {
    return KINDS.contains(kind(card)) || isDanger(card);
  }

  private static boolean isDanger(Document card) {
    return card.root().path("danger").asBoolean(false);
  }

  /**
   * Everything that protects people.
   *
   * @param cards of the rule base with its add-ons
   */
  Safeguards of(Collection<Document> cards) {
    SortedMap<String, String> whole = new TreeMap<>();
    SortedMap<String, String> partly = new TreeMap<>();
    for (Document card : cards) {
      String name = kind(card) + " " + id(card);
      if (holds(card)) {
        whole.put(name, card.root().toString());
      } else {
        partly.put(name, new Strictness(card).toString());
      }
    }
    rules.stream()
        .filter(RuleText::stops)
        .forEach(r -> whole.merge("rule " + r.name(), r.when() + r.then(), String::concat));
    return new Safeguards(whole, partly);
  }

  private static Set<String> asks(Document card) {
    return Set.copyOf(card.root().path("only-if").propertyNames());
  }

  private static String kind(Document card) {
    return Layers.kind(card);
  }

  private static String id(Document card) {
    return card.root().path(kind(card)).asString("").strip();
  }
}
