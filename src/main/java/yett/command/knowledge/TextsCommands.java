package yett.command.knowledge;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;
import tools.jackson.dataformat.yaml.YAMLWriteFeature;
import yett.command.common.Completions;
import yett.command.common.NewFile;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Untranslated;

/** {@code knowledge texts}: lists the texts of the cards that have no translation yet. */
public record TextsCommands(Desk desk, Console console, StandardStreams output) {
  private static final String TEXTS =
      "Usage: knowledge texts [FOLDER] --language LANGUAGE [--area AREA] [--begin"
          + " FILE]. Lists the texts of the cards that have no translation into the language,"
          + " or an outdated one; without --area, how many there are in each area. --begin"
          + " writes those of the area to a new file, each with room for its translation:"
          + " fill it in, and put it into the area's folder as LANGUAGE.texts.yaml.";

  private static final ObjectMapper YAML =
      YAMLMapper.builder()
          .disable(YAMLWriteFeature.WRITE_DOC_START_MARKER)
          .disable(YAMLWriteFeature.SPLIT_LINES)
          .enable(YAMLWriteFeature.MINIMIZE_QUOTES)
          .build();

  @Command(
      name = {"knowledge", "texts"},
      description = "list the texts of the cards that are not translated yet",
      help = TEXTS,
      completionProvider = Completions.FILES)
  public void texts(
      @Arguments List<String> words,
      @Option(longName = "area", description = "only the cards of this folder") String area,
      @Option(longName = "begin", description = "write them to this new file, to be filled in")
          String begin) {
    String language = desk.choice().language();
    UsageException.when(
        words.size() > 1 || language.isEmpty() || begin != null && area == null, TEXTS);
    KnowledgeSource source =
        words.isEmpty() ? desk.choice().source() : desk.choice().source(Path.of(words.get(0)));
    Untranslated.Of found = Untranslated.language(language, source.files());
    List<Untranslated> lacking =
        found.lacking().stream().filter(t -> area == null || t.area().equals(area)).toList();
    if (begin != null) {
      NewFile.write(NewFile.named(begin), begun(lacking), output);
    } else if (area == null) {
      console.show(counts(lacking));
    } else {
      lacking.forEach(
          t ->
              output.print(
                  (t.stale() ? "out of date " : "") + t.card() + " " + t.place() + ": " + t.own()));
    }
    console.say(
        (found.all() - found.lacking().size())
            + " of "
            + found.all()
            + " texts are in "
            + language
            + (area == null ? "." : "; of " + area + ", " + lacking.size() + " are not."));
  }

  private static Block.Rows counts(List<Untranslated> lacking) {
    SortedMap<String, List<Untranslated>> byArea =
        lacking.stream()
            .collect(Collectors.groupingBy(Untranslated::area, TreeMap::new, Collectors.toList()));
    return new Block.Rows(
        byArea.entrySet().stream()
            .map(
                e -> {
                  long stale = e.getValue().stream().filter(Untranslated::stale).count();
                  return Block.row(
                      e.getKey().isEmpty() ? "(top)" : e.getKey(),
                      e.getValue().size()
                          + " not yet"
                          + (stale > 0 ? ", " + stale + " of them out of date" : ""));
                })
            .toList());
  }

  private static String begun(List<Untranslated> lacking) {
    Map<String, Map<String, Map<String, String>>> cards = new LinkedHashMap<>();
    for (Untranslated text : lacking) {
      Map<String, String> pair = new LinkedHashMap<>();
      pair.put("of", text.own());
      pair.put("is", "");
      cards.computeIfAbsent(text.card(), c -> new LinkedHashMap<>()).put(text.place(), pair);
    }
    return YAML.writeValueAsString(Map.of("cards", cards));
  }
}
