package yett.command.knowledge;

import java.util.List;
import java.util.Locale;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import yett.saying.Heard;
import yett.saying.Hearing;

/**
 * Writes what was understood from words as JSON for other programs, in the form of {@code
 * shared/heard.schema.json}.
 */
final class HeardJson {
  private static final JsonMapper MAPPER = JsonMapper.shared();
  private static final double STEPS = 1000;

  private HeardJson() {}

  static String of(String saying, Heard heard, Hearing hearing, HeardThings things) {
    ObjectNode line = MAPPER.createObjectNode();
    line.put("said", saying);
    line.put("by", hearing.withoutMeanings().isPresent() ? "words" : "words and meaning");
    put(line.putArray("dangers"), heard.dangers(), things);
    put(line.putArray("findings"), heard.findings(), things);
    return line.toString();
  }

  private static void put(ArrayNode list, List<Heard.Found> found, HeardThings things) {
    for (Heard.Found f : found) {
      ObjectNode one = list.addObject();
      one.put("kind", f.thing().kind().name().toLowerCase(Locale.ROOT));
      one.put("card", f.thing().card());
      if (!f.thing().outcome().isEmpty()) {
        one.put("outcome", f.thing().outcome());
      }
      one.put("words", things.words(f.thing()));
      one.put("weight", Math.round(f.weight() * STEPS) / STEPS);
    }
  }
}
