package yett.command.knowledge;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import org.springframework.shell.core.command.annotation.Option;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.command.cases.CaseSearchOptions;
import yett.command.common.Completions;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.console.Console;
import yett.console.Progress;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.files.WholeFile;
import yett.interview.course.Expertise;
import yett.interview.course.Interview;
import yett.review.Acceptance;
import yett.review.CaseSettler;
import yett.review.Proposal;
import yett.review.Reviewer;
import yett.review.SettledCase;

/** {@code knowledge review}: compares closed cases with the cards and proposes changes. */
public record ReviewCommands(Desk desk, Console console) {
  private static final String REVIEW =
      "Usage: knowledge review FOLDER [--accept all|NAME,...] [--only PART] [--weight"
          + " CASES] [--site GATE] [--since DAY] [--until DAY]. Shows where the closed cases"
          + " of the casebook contradict the cards of the folder, with counts and ranges. At"
          + " a terminal each is accepted or left; --accept does so without asking. The cases"
          + " beside the cards are run before and after, then the changes are written into"
          + " the cards.";

  @Command(
      name = {"knowledge", "review"},
      description = "compare closed cases with the cards",
      help = REVIEW,
      completionProvider = Completions.FILES)
  public void review(
      @Arguments List<String> words,
      @Option(
              longName = "accept",
              description = "all, or names separated by commas, such as prior/chain-slack")
          String accept,
      @Option(
              longName = "only",
              description = "the cases to run: the beginning of a path, or one case's name")
          String only,
      @Option(
              longName = "weight",
              description = "how many cases a card's judgement counts for; usually 20",
              defaultValue = "20")
          String weight,
      @Option(longName = "site", description = CaseSearchOptions.SITE) String site,
      @Option(longName = "since", description = CaseSearchOptions.SINCE) String since,
      @Option(longName = "until", description = CaseSearchOptions.UNTIL) String until) {
    UsageException.when(words.isEmpty(), REVIEW);
    Path folder = Path.of(String.join(" ", words));
    SortedMap<String, String> files = desk.choice().source(folder).files();
    Expertise expertise = desk.ruleBases().open(() -> files);
    List<SettledCase> cases =
        settled(new CaseSearchOptions(site, null, since, until, null), expertise);
    List<Proposal> found =
        new Reviewer(expertise.base(), expertise.model(), weight(weight)).review(cases);
    if (found.isEmpty()) {
      console.say("The cases contradict nothing in the cards.");
      return;
    }
    ProposalChoice choice = new ProposalChoice(console);
    console.show(new ReviewViews(expertise.base()).proposals(found));
    List<Proposal> accepted =
        choice.accepted(Objects.requireNonNullElse(accept, "").strip(), found);
    if (accepted.isEmpty()) {
      console.say("Nothing was accepted, and nothing is written.");
      return;
    }
    Map<String, Path> mine = OwnCards.of(folder, files.keySet());
    Acceptance acceptance = Acceptance.of(files, accepted, mine::containsKey);
    acceptance
        .left()
        .forEach(p -> console.say("Left as it is: " + p.name() + " is not in this folder."));
    if (acceptance.changed().isEmpty()) {
      return;
    }
    new ReviewTrial(desk, console).show(Optional.ofNullable(only), expertise, files, acceptance);
    if (accept == null && !choice.yes("Write this into the cards? yes or no")) {
      console.say("Nothing is written.");
      return;
    }
    acceptance.changed().forEach(f -> write(mine.get(f), acceptance.files().get(f)));
    console.say(
        "Written: "
            + String.join(", ", acceptance.changed())
            + ". Version control shows what changed.");
  }

  private static double weight(String typed) {
    try {
      double weight = Double.parseDouble(typed);
      if (weight >= 1 && weight <= 1000) {
        return weight;
      }
    } catch (NumberFormatException e) {
      // Reported below.
    }
    throw new UsageException(
        Words.quoted(typed) + " is not a weight: give a number of cases from 1 to 1000.");
  }

  private List<SettledCase> settled(CaseSearchOptions sought, Expertise expertise) {
    var search = sought.in(expertise.base(), Optional.empty());
    List<CaseSummary> closed =
        desk.casebook().search(search).stream()
            .filter(c -> c.summary().state() == CaseStatus.CLOSED)
            .toList();
    List<SettledCase> settled = new ArrayList<>();
    try (Interview interview = expertise.newInterview();
        Progress progress = console.start("Reading cases", closed.size())) {
      CaseSettler settler = new CaseSettler(interview);
      desk.casebook()
          .forEach(
              closed,
              (line, events) -> {
                settler.settle(OpenCase.entries(events)).ifPresent(settled::add);
                progress.step();
              });
    }
    console.say(
        "Closed cases: "
            + closed.size()
            + "; of these "
            + settled.size()
            + " tell what was wrong (repaired, and no doubt left of the cause).");
    return settled;
  }

  private static void write(Path file, String text) {
    try {
      WholeFile.replace(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write " + file, e);
    }
  }
}
