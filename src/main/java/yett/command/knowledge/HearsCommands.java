package yett.command.knowledge;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.command.common.Completions;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.knowledge.RuleBase;
import yett.saying.Heard;
import yett.saying.Hearing;
import yett.saying.Tellings;

/** {@code knowledge hears}: shows what words would be understood as. */
public record HearsCommands(Desk desk, Console console, StandardStreams output) {
  private static final String HEARS =
      "Usage: knowledge hears WORDS... | --file FILE [--json] [--by-words]. Shows what"
          + " these words, or each saying of the file, would be understood as: dangers that"
          + " would be asked about, then findings, the best first, each with its weight from"
          + " 0 to 1. A FILE has one saying per line, or ends in .yaml and is a list of"
          + " sayings with \"say\". --json writes one line of JSON per saying; --by-words"
          + " leaves the model of meanings out, as a program without it does.";

  @Command(
      name = {"knowledge", "hears"},
      description = "show what any words would be understood as",
      help = HEARS,
      completionProvider = Completions.FILES)
  public void hears(
      @Arguments List<String> words,
      @Option(longName = "file", description = "a file of sayings") String file,
      @Option(longName = "json", description = "one line of JSON per saying, on standard output")
          boolean json,
      @Option(longName = "by-words", description = "by words alone, without the model")
          boolean byWords) {
    boolean typed = !words.isEmpty();
    UsageException.when(typed == (file != null && !file.isEmpty()), HEARS);
    List<String> sayings = typed ? List.of(String.join(" ", words)) : SaidFile.read(Path.of(file));
    RuleBase base = desk.base();
    Hearing hearing = byWords ? Hearing.byWords(base) : Hearing.of(base);
    Tellings tellings = new Tellings(hearing);
    HeardThings things = new HeardThings(base);
    for (String saying : sayings) {
      Heard heard = tellings.hear(saying);
      if (json) {
        output.json(HeardJson.of(saying, heard, hearing, things));
      } else {
        console.show(blocks(saying, heard, things));
      }
    }
    if (!json) {
      hearing
          .withoutMeanings()
          .filter(why -> !byWords)
          .ifPresent(why -> console.say(byWordsAlone(why)));
    }
  }

  private static String byWordsAlone(String why) {
    return "Understood by words alone: " + why + ".";
  }

  private static List<Block> blocks(String saying, Heard heard, HeardThings things) {
    List<Block> blocks = new ArrayList<>(List.of(Block.heading(saying)));
    List<Block.Row> rows = new ArrayList<>();
    heard.dangers().forEach(f -> rows.add(row("Danger", f, things)));
    heard.findings().forEach(f -> rows.add(row(HeardThings.kind(f.thing()), f, things)));
    blocks.add(
        rows.isEmpty() ? Block.paragraph("Nothing that the cards know.") : new Block.Rows(rows));
    return blocks;
  }

  private static Block.Row row(String kind, Heard.Found found, HeardThings things) {
    return Block.row(
        kind,
        String.format(
            Locale.ROOT,
            "%.2f  %s: %s",
            found.weight(),
            HeardThings.name(found.thing()),
            things.words(found.thing())));
  }
}
