package yett.knowledge;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import yett.knowledge.CardFile.Document;

/**
 * What keeps people from harm: stops, dangers, cautions, set-ups, proofs, and what the rules that
 * stop or forbid something speak of. An add-on can add to it and change nothing of it. What else it
 * replaces stays as strict as it was.
 */
final class Protection {
  private static final Set<String> KINDS = Set.of("stop", "caution", "set-up", "proof");
  private static final Set<String> NAMED_IN_RULES = Set.of("check", "complaint", "history", "site");

  /** Lists from which a card that replaces another takes nothing away. */
  private static final List<String> KEPT =
      List.of("needs", "hazards", "entails", "proofs", "until-then", "inspect");

  /** A list to which it adds nothing: what an inspection lets pass with a remark. */
  private static final String REMARK = "remark";

  private static final List<String> URGENT = List.of("urgency", "weekend");

  private final List<RuleText> rules;
  private final Set<String> named = new HashSet<>();
  private final Set<String> followUps = new HashSet<>();

  /**
   * @param cards of the rule base
   */
  Protection(List<RuleText> rules, Collection<Document> cards) {
    this.rules = rules;
    rules.stream().filter(RuleText::stops).forEach(r -> named.addAll(r.conditions()));
    cards.forEach(c -> followUps.addAll(texts(c, "entails")));
    cards.stream().filter(this::isOfItself).forEach(c -> named.addAll(asks(c)));
    // A question that is asked no more answers nothing.
    List<Document> questions = cards.stream().filter(c -> kind(c).equals("site")).toList();
    for (int before = -1; before < named.size(); ) {
      before = named.size();
      questions.stream().filter(c -> named.contains(id(c))).forEach(c -> named.addAll(asks(c)));
    }
  }

  /** Checks and other cards that the rules which stop or forbid something speak of. */
  Set<String> named() {
    return named;
  }

  boolean holds(Document card) {
    return isOfItself(card) || NAMED_IN_RULES.contains(kind(card)) && named.contains(id(card));
  }

  /** Whether an add-on may replace it, as strict as it was, and not do without it. */
  boolean staysOn(Document card) {
    return holds(card)
        || followUps.contains(id(card))
        || urgency(card, "urgency") == Pressing.Urgency.AT_ONCE.ordinal();
  }

  private boolean isOfItself(Document card) {
    return KINDS.contains(kind(card)) || isDanger(card);
  }

  private static boolean isDanger(Document card) {
    return card.root().path("danger").asBoolean(false);
  }

  /**
   * All of it.
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
        StringBuilder kept = new StringBuilder("who " + rank(card));
        KEPT.forEach(field -> kept.append(' ').append(field).append(texts(card, field)));
        URGENT.forEach(field -> kept.append(' ').append(field).append(urgency(card, field)));
        kept.append(mainsPart(card));
        partly.put(name, kept.toString());
      }
    }
    rules.stream()
        .filter(RuleText::stops)
        .forEach(r -> whole.merge("rule " + r.name(), r.when() + r.then(), String::concat));
    return new Safeguards(whole, partly);
  }

  /** What a card would have to keep of the one that it replaces, in words; nothing if it does. */
  static List<String> lost(Document old, Document fresh) {
    List<String> lost = new ArrayList<>();
    for (String field : KEPT) {
      List<String> now = texts(fresh, field);
      texts(old, field).stream()
          .filter(text -> !now.contains(text))
          .forEach(text -> lost.add("\"" + text + "\" in \"" + field + "\""));
    }
    List<String> passed = texts(old, REMARK);
    texts(fresh, REMARK).stream()
        .filter(outcome -> !passed.contains(outcome))
        .forEach(outcome -> lost.add("that \"" + outcome + "\" fails an inspection"));
    if (rank(fresh) < rank(old)) {
      lost.add("\"who: " + Role.values()[rank(old)].word() + "\"");
    }
    if (!mainsPart(fresh).equals(mainsPart(old))) {
      lost.add(
          mainsPart(old).isEmpty()
              ? "that it is no work on a mains part by the firm's setting"
              : "\"mains-part: " + mainsPart(old) + "\"");
    }
    for (String field : URGENT) {
      if (urgency(fresh, field) < urgency(old, field)) {
        lost.add("\"" + field + ": " + old.root().path(field).asString("") + "\"");
      }
    }
    return lost;
  }

  /** What the firm decides by; a card that replaces another puts it under no other setting. */
  private static String mainsPart(Document card) {
    return card.root().path("mains-part").asString("").strip();
  }

  private static int rank(Document card) {
    String usual = kind(card).equals("complaint") ? Role.CALLER.word() : Role.TECHNICIAN.word();
    String who = card.root().path("who").asString(usual);
    return Role.words().contains(who) ? Role.named(who).ordinal() : 0;
  }

  /** Of a pressing matter; on the weekend as in the week, if its card does not say. */
  private static int urgency(Document card, String field) {
    JsonNode said = card.root().has(field) ? card.root().get(field) : card.root().path("urgency");
    return Stream.of(Pressing.Urgency.values())
        .filter(u -> u.word().equals(said.asString("").strip()))
        .mapToInt(Enum::ordinal)
        .findFirst()
        .orElse(0);
  }

  private static Set<String> asks(Document card) {
    return Set.copyOf(card.root().path("only-if").propertyNames());
  }

  private static List<String> texts(Document card, String field) {
    JsonNode value = card.root().path(field);
    return value.isArray()
        ? StreamSupport.stream(value.spliterator(), false)
            .map(item -> item.asString("").strip())
            .collect(Collectors.toList())
        : value.isValueNode() ? List.of(value.asString("").strip()) : List.of();
  }

  private static String kind(Document card) {
    return Layers.kind(card);
  }

  private static String id(Document card) {
    return card.root().path(kind(card)).asString("").strip();
  }
}
