package yett.command.knowledge;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.bench.Anomalies;
import yett.bench.Anomaly;
import yett.bench.SampledRules;
import yett.command.common.Completions;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.console.Block;
import yett.console.Console;
import yett.console.Progress;
import yett.desk.Desk;
import yett.interview.course.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.wording.Wording;

/** {@code knowledge anomalies}: finds weak places of a rule base that are not errors. */
public record AnomaliesCommands(Desk desk, Console console) {

  private static final String ANOMALIES =
      "Usage: knowledge anomalies [FOLDER] [--sample GATES]. What follows from the cards and the"
          + " text of the rules is marked as proved. With --sample the rules are also run on that"
          + " many gates drawn at random, and what came up on none, or in contradiction, is marked"
          + " as sampled. The exit status is 0 whatever is found: these are places to look at.";

  @Command(
      name = {"knowledge", "anomalies"},
      description =
          "find what is redundant, subsumed, contradictory, circular, unreachable or missing",
      help = ANOMALIES,
      completionProvider = Completions.FILES)
  public void anomalies(
      @Arguments List<String> words,
      @Option(
              longName = "sample",
              description = "run the rules on this many gates drawn at random, such as 200",
              defaultValue = "0")
          String sample) {
    KnowledgeSource source =
        words.isEmpty()
            ? desk.choice().source()
            : desk.choice().source(Path.of(String.join(" ", words)));
    int gates = gates(sample);
    RuleBase base = RuleBase.read(source);
    List<Anomaly> found = new ArrayList<>(Anomalies.proved(base));
    if (gates > 0) {
      found.addAll(sampled(source, gates));
    }
    for (Anomaly.Kind kind : Anomaly.Kind.values()) {
      show(kind, found.stream().filter(a -> a.kind() == kind).toList());
    }
    console.show(
        Block.blank(),
        Block.paragraph(
            (gates > 0
                    ? "Sampled on "
                        + gates
                        + " gates: rules that conclude nothing, two usual ranges for one reading. "
                    : "Rules were not run; --sample 200 runs them on gates drawn at random. ")
                + "Not looked for: conditions of rules that mean the same in other words."));
  }

  private int gates(String typed) {
    if (!typed.matches("\\d{1,5}")) {
      throw new UsageException(Words.quoted(typed) + " is not a number of gates. " + ANOMALIES);
    }
    return Integer.parseInt(typed);
  }

  private List<Anomaly> sampled(KnowledgeSource source, int gates) {
    Expertise expertise = desk.ruleBases().open(source);
    try (Progress progress = console.start("Judging", gates)) {
      return SampledRules.of(expertise.base(), expertise.rules(), gates, 1, progress::step);
    }
  }

  private void show(Anomaly.Kind kind, List<Anomaly> found) {
    String name = Wording.capital(kind.name().toLowerCase(Locale.ROOT));
    console.show(Block.heading(name + " (" + kind.meaning() + "): " + found.size()));
    console.show(
        new Block.Rows(
            found.stream()
                .map(
                    a ->
                        Block.row(
                            a.about(),
                            a.message() + (a.found() == Anomaly.Found.SAMPLED ? " (sampled)" : "")))
                .toList()));
  }
}
