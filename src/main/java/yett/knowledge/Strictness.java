package yett.knowledge;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import tools.jackson.databind.JsonNode;
import yett.knowledge.CardFile.Document;

/** The strict parts of a card, which a card that replaces it has to keep. */
record Strictness(Document card) {
  /** Lists that a replacing card may extend but not shorten. */
  private static final List<String> KEPT =
      List.of("needs", "hazards", "entails", "proofs", "until-then", "inspect");

  /**
   * A list that a replacing card may not extend: outcomes that pass an inspection with a remark.
   */
  private static final String REMARK = "remark";

  private static final List<String> URGENT = List.of("urgency", "weekend");

  /** What a replacing card lacks, in words; empty if it is as strict. */
  List<String> lost(Strictness fresh) {
    List<String> lost = new ArrayList<>();
    for (String field : KEPT) {
      List<String> now = fresh.texts(field);
      texts(field).stream()
          .filter(text -> !now.contains(text))
          .forEach(text -> lost.add("\"" + text + "\" in \"" + field + "\""));
    }
    List<String> passed = texts(REMARK);
    fresh.texts(REMARK).stream()
        .filter(outcome -> !passed.contains(outcome))
        .forEach(outcome -> lost.add("that \"" + outcome + "\" fails an inspection"));
    if (fresh.rank() < rank()) {
      lost.add("\"who: " + Role.values()[rank()].word() + "\"");
    }
    if (!fresh.mainsPart().equals(mainsPart())) {
      lost.add(
          mainsPart().isEmpty()
              ? "that it is no work on a mains part by the firm's setting"
              : "\"mains-part: " + mainsPart() + "\"");
    }
    for (String field : URGENT) {
      if (fresh.urgency(field) < urgency(field)) {
        lost.add("\"" + field + ": " + card.root().path(field).asString("") + "\"");
      }
    }
    return lost;
  }

  /** All strict parts as text, equal for equally strict cards. */
  @Override
  public String toString() {
    StringBuilder kept = new StringBuilder("who " + rank());
    KEPT.forEach(field -> kept.append(' ').append(field).append(texts(field)));
    URGENT.forEach(field -> kept.append(' ').append(field).append(urgency(field)));
    return kept.append(mainsPart()).toString();
  }

  /** The firm's setting that applies to the card; a replacing card has to keep it. */
  private String mainsPart() {
    return card.root().path("mains-part").asString("").strip();
  }

  private int rank() {
    boolean said = Layers.kind(card).equals("complaint");
    String usual = said ? Role.CALLER.word() : Role.TECHNICIAN.word();
    String who = card.root().path("who").asString(usual);
    return Role.words().contains(who) ? Role.named(who).ordinal() : 0;
  }

  /** The urgency of a pressing matter; the weekend's is that of the week if the card gives none. */
  int urgency(String field) {
    JsonNode said = card.root().has(field) ? card.root().get(field) : card.root().path("urgency");
    return Stream.of(Pressing.Urgency.values())
        .filter(u -> u.word().equals(said.asString("").strip()))
        .mapToInt(Enum::ordinal)
        .findFirst()
        .orElse(0);
  }

  List<String> texts(String field) {
    JsonNode value = card.root().path(field);
    return value.isArray()
        ? StreamSupport.stream(value.spliterator(), false)
            .map(item -> item.asString("").strip())
            .collect(Collectors.toList())
        : value.isValueNode() ? List.of(value.asString("").strip()) : List.of();
  }
}
