package yett.knowledge;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yett.knowledge.Pressing.Urgency;

/** Reads what cards contain for calls. */
final class TelephoneReader {
  private static final List<String> URGENCIES =
      Arrays.stream(Urgency.values()).map(Urgency::word).toList();

  private final SpokenReader spoken = new SpokenReader();
  private final Map<String, Pressing> pressing = new LinkedHashMap<>();
  private final Map<String, List<String>> watch = new LinkedHashMap<>();
  private final Map<String, List<String>> untilThen = new LinkedHashMap<>();
  private final Map<String, String> lookFirst = new LinkedHashMap<>();
  private final Map<String, String> lookNext = new LinkedHashMap<>();
  private final Map<String, List<String>> desk = new LinkedHashMap<>();
  private final Map<String, String> cautions = new LinkedHashMap<>();
  private final Map<String, String> child = new LinkedHashMap<>();
  private final Map<String, Urgency> dangers = new LinkedHashMap<>();

  /** Reads the fields of a card that belong here and leaves the others. */
  void card(String kind, String id, Fields fields) {
    spoken.card(kind, id, fields);
    switch (kind) {
      case "complaint" -> {
        untilThen.putIfAbsent(id, fields.texts("until-then"));
        keep(lookFirst, id, fields, "look-first");
      }
      case "repair" -> watch.putIfAbsent(id, fields.texts("watch"));
      case "stop" -> desk.putIfAbsent(id, fields.texts("desk"));
      case "check" -> {
        keep(child, id, fields, "child");
        keep(lookNext, id, fields, "look-next");
        Urgency urgency = urgency(fields, "urgency", Urgency.AT_ONCE);
        if (urgency != Urgency.AT_ONCE) {
          dangers.putIfAbsent(id, urgency);
        }
      }
      case "caution" -> cautions.putIfAbsent(id, fields.text("lay", ""));
      case "pressing" -> pressing.putIfAbsent(id, pressing(id, fields));
      default -> {}
    }
  }

  private static void keep(Map<String, String> kept, String id, Fields fields, String field) {
    String text = fields.text(field, "");
    if (!text.isEmpty()) {
      kept.putIfAbsent(id, text);
    }
  }

  Telephone read() {
    return new Telephone(
        spoken.read(),
        Collections.unmodifiableMap(pressing),
        Collections.unmodifiableMap(watch),
        Collections.unmodifiableMap(untilThen),
        Collections.unmodifiableMap(lookFirst),
        Collections.unmodifiableMap(lookNext),
        Collections.unmodifiableMap(desk),
        Collections.unmodifiableMap(cautions),
        Collections.unmodifiableMap(child),
        Collections.unmodifiableMap(dangers));
  }

  private static Pressing pressing(String id, Fields fields) {
    Urgency urgency = urgency(fields, "urgency", Urgency.NEXT_WORKING_DAY);
    return new Pressing(
        id,
        fields.text("ask"),
        fields.text("said"),
        urgency,
        urgency(fields, "weekend", urgency),
        fields.texts("if-said"),
        fields.texts("until-then"),
        fields.text("source"));
  }

  private static Urgency urgency(Fields fields, String field, Urgency usual) {
    String word = fields.oneOf(field, usual.word(), URGENCIES);
    return Urgency.values()[URGENCIES.indexOf(word)];
  }
}
