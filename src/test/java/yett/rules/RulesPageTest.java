package yett.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yett.bench.Checker;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

/**
 * The lists in docs/rules.md are made of the code. Write them anew with {@code mvn test
 * -Dtest=RulesPageTest -Dyett.write=true}.
 */
class RulesPageTest {
  private static final Path PAGE = Path.of("docs/rules.md");
  private static final Path STARTS = Path.of("docs/examples/rules/starting-points.drl");
  private static final String MARK = "<!-- Below: made by RulesPageTest; do not edit. -->\n";

  @Test
  void the_page_tells_every_fact_and_every_conclusion() throws IOException {
    String page = Files.readString(PAGE);
    String head = page.substring(0, page.indexOf(MARK) + MARK.length());
    String expected =
        head
            + table("What rules are told", Fact.class)
            + table("What rules may conclude", Conclusion.class)
            + "\n## Rules to start from\n\n```\n"
            + Files.readString(STARTS)
            + "```\n";
    if (Boolean.getBoolean("yett.write")) {
      Files.writeString(PAGE, expected);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(expected);
  }

  @Test
  void there_is_a_sound_rule_to_start_from_for_each() throws IOException {
    String starts = Files.readString(STARTS);
    for (Class<?> kind : kinds().toList()) {
      assertThat(starts.substring(starts.indexOf("rule \""))).contains(kind.getSimpleName() + "(");
    }
    assertThat(RuleCheck.grammar("starts.drl", starts)).isEmpty();
    SortedMap<String, String> rules = new TreeMap<>();
    rules.put("starts.drl", starts);
    assertThat(RuleCheck.compiled(rules, new TreeMap<>())).isEmpty();
    SortedMap<String, String> files = KnowledgeSource.folder(Path.of("knowledge")).files();
    files.put("starts.drl", starts);
    assertThat(new Checker().check(files).problems()).isEmpty();
    assertThat(RuleBase.read(() -> files).rules()).containsKey("starts.drl");
  }

  /** A contradiction is concluded by its maker, all others as new ones. */
  private static Stream<Class<?>> kinds() {
    return Stream.of(Fact.class, Conclusion.class)
        .flatMap(all -> Arrays.stream(all.getPermittedSubclasses()))
        .filter(kind -> kind != Conclusion.Contradiction.class);
  }

  private static List<Class<?>> byName(Class<?> sealed) {
    return Arrays.stream(sealed.getPermittedSubclasses())
        .<Class<?>>map(kind -> kind)
        .sorted(Comparator.comparing(Class::getSimpleName))
        .toList();
  }

  private static String table(String heading, Class<?> sealed) throws IOException {
    String code =
        Files.readString(Path.of("src/main/java/yett/rules", sealed.getSimpleName() + ".java"));
    StringBuilder text =
        new StringBuilder("\n## " + heading + "\n\n| | fields | |\n|---|---|---|\n");
    for (Class<?> kind : byName(sealed)) {
      List<String> fields =
          Arrays.stream(kind.getRecordComponents())
              .map(c -> "`" + c.getName() + "` (" + c.getType().getSimpleName() + ")")
              .toList();
      text.append("| `").append(kind.getSimpleName()).append("` | ");
      text.append(String.join(", ", fields)).append(" | ");
      text.append(words(code, kind.getSimpleName())).append(" |\n");
    }
    return text.toString();
  }

  /** The words that stand before a record in the code, its fields' after them. */
  private static String words(String code, String name) {
    Matcher comment =
        Pattern.compile("(?s)/\\*\\*((?:(?!\\*/).)*)\\*/\\s*record " + name + "\\(").matcher(code);
    assertThat(comment.find()).as(name).isTrue();
    return comment
        .group(1)
        .lines()
        .map(line -> line.replaceFirst("^\\s*\\*? ?", "").strip())
        .filter(line -> !line.isEmpty())
        .map(
            line ->
                line.replaceFirst("^@param (\\w+)", "`$1`:")
                    .replaceAll("\\{@(?:code|link) (?:[\\w.]+[.#])?(\\w+)}", "`$1`"))
        .collect(Collectors.joining(" "));
  }
}
