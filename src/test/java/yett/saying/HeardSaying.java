package yett.saying;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * A saying with what it means, as src/test/resources/sayings/heard.yaml has them.
 *
 * @param means groups, each with things any of which will do
 * @param dangers the same of what has to be asked about
 * @param mayAsk danger checks that are rightly asked about too
 * @param hasCard whether the cards have anything for it, if something is meant
 * @param aside whether nobody looks at it while anything is tuned
 */
record HeardSaying(
    String say,
    List<List<String>> means,
    List<List<String>> dangers,
    List<String> mayAsk,
    boolean hasCard,
    boolean aside) {

  static List<HeardSaying> all() throws IOException {
    return read("heard");
  }

  /** The second set, of which two in three are kept aside. */
  static List<HeardSaying> again() throws IOException {
    return read("heard-again");
  }

  /** The third set, in which every third, drawn by lot, is kept aside. */
  static List<HeardSaying> anew() throws IOException {
    return read("heard-anew");
  }

  /** The fourth set, of sayings that provoke; every second, drawn by lot, is kept aside. */
  static List<HeardSaying> hard() throws IOException {
    return read("heard-hard");
  }

  /** The fifth set, by somebody who had read nothing of the project; a third is kept aside. */
  static List<HeardSaying> cold() throws IOException {
    return read("heard-cold");
  }

  /** The sixth set, from callers' lives; half, drawn by lot, is kept aside. */
  static List<HeardSaying> plain() throws IOException {
    return read("heard-plain");
  }

  private static List<HeardSaying> read(String file) throws IOException {
    List<HeardSaying> all = new ArrayList<>();
    String text = Files.readString(Path.of("src/test/resources/sayings/" + file + ".yaml"));
    for (JsonNode node : new YAMLMapper().readTree(text)) {
      all.add(
          new HeardSaying(
              node.get("say").stringValue(),
              groups(node.path("means")),
              groups(node.path("dangers")),
              texts(node.path("may-ask")),
              !node.has("no-card"),
              node.path("aside").asBoolean(false)));
    }
    return all;
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(n -> texts.add(n.stringValue()));
    return texts;
  }

  private static List<List<String>> groups(JsonNode list) {
    return texts(list).stream().map(g -> Arrays.asList(g.split(" / "))).toList();
  }

  boolean isAboutNothing() {
    return means.isEmpty() && dangers.isEmpty() && hasCard;
  }

  /** Whether one of the things is the one named: a card, or a card=outcome. */
  static boolean is(String named, Thing thing) {
    String[] parts = named.split("=");
    return thing.card().equals(parts[0])
        && (parts.length == 1 || thing.outcome().isEmpty() || thing.outcome().equals(parts[1]));
  }

  static boolean among(List<String> any, List<Thing> things) {
    return any.stream().anyMatch(a -> things.stream().anyMatch(t -> is(a, t)));
  }
}
