package yett.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import yett.files.WholeFile;

/**
 * Provides the schemas with which an editor completes and checks cards: those next to the rule
 * base, or copies of the program's own if there are none.
 */
final class Schemas {
  static final String CARD = "card.schema.json";
  static final String CASE = "replay-case.schema.json";

  private static final Pattern REFERENCE = Pattern.compile("card-[a-z-]+\\.schema\\.json");

  private Schemas() {}

  /** The folder with the schemas, which is made if there is none. */
  static Path near(Path folder) throws IOException {
    for (Path p = folder.toAbsolutePath().normalize(); p != null; p = p.getParent()) {
      if (Files.exists(p.resolve("shared").resolve(CARD))) {
        return p.resolve("shared");
      }
    }
    Path shared = Files.createDirectories(folder.toAbsolutePath().normalize().resolve("shared"));
    Set<String> names = new LinkedHashSet<>(Set.of(CARD, CASE));
    REFERENCE.matcher(text(CARD)).results().map(MatchResult::group).forEach(names::add);
    names.add("card-parts.schema.json");
    for (String name : names) {
      WholeFile.replace(shared.resolve(name), text(name));
    }
    return shared;
  }

  private static String text(String name) throws IOException {
    try (InputStream schema = Schemas.class.getResourceAsStream("/shared/" + name)) {
      return new String(schema.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
