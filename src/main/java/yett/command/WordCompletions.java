package yett.command;

import java.io.UncheckedIOException;
import java.nio.file.InvalidPathException;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.command.completion.CompletionContext;
import org.springframework.shell.core.command.completion.CompletionProposal;
import org.springframework.shell.core.command.completion.CompletionProvider;
import org.springframework.shell.core.command.completion.FileNameCompletionProvider;
import yett.bench.CardView;
import yett.casebook.CaseSummary;
import yett.casebook.SiteRecord;
import yett.command.common.CommandHelp;
import yett.command.common.Completions;
import yett.desk.Desk;
import yett.knowledge.Role;
import yett.practice.Level;
import yett.worksheet.Worksheet;
import yett.worksheet.catalogue.Catalogue;

/** Completions of the words after a command's name and after an option that takes a value. */
final class WordCompletions {
  private final Desk desk;
  private final CommandRegistry commands;
  private final CompletionProvider files = WordCompletions::fileNames;
  private final Map<String, CompletionProvider> ofOptions;

  WordCompletions(Desk desk, CommandRegistry commands) {
    this.desk = desk;
    this.commands = commands;
    this.ofOptions =
        Map.of(
            "as", anyOf(Role::words),
            "level", anyOf(Level::words),
            "state", anyOf(() -> List.of("open", "closed")),
            "site", anyOf(this::gates),
            "cause", anyOf(() -> desk.base().causes().keySet()),
            "for", anyOf(() -> List.of("customer", "technician")),
            "html", files,
            "pdf", files,
            "to", files);
  }

  /** The provider that completes a command's words, by the name in the command's annotation. */
  CompletionProvider named(String name) {
    CompletionProvider words =
        switch (name) {
          case Completions.COMMANDS -> this::commandNames;
          case Completions.CASES -> anyOf(this::cases);
          case Completions.CARDS -> anyOf(() -> CardView.ids(desk.base()));
          case Completions.GATES -> anyOf(this::gates);
          case Completions.FILES -> files;
          case Completions.CALCULATIONS ->
              anyOf(() -> Catalogue.all().stream().map(Worksheet::id).toList());
          default -> context -> List.of();
        };
    return context ->
        context.getCommandOption() == null
            ? words.apply(context)
            : ofOptions
                .getOrDefault(context.getCommandOption().longName(), c -> List.of())
                .apply(context);
  }

  /** The next word of each command name that begins with what was typed. */
  private List<CompletionProposal> commandNames(CompletionContext context) {
    String typed =
        context.getWords().subList(0, context.getWordIndex()).stream()
            .map(word -> word + " ")
            .collect(Collectors.joining());
    return CommandHelp.listed(commands).stream()
        .map(Command::getName)
        .filter(name -> name.startsWith(typed))
        .map(name -> name.substring(typed.length()).split(" ")[0])
        .distinct()
        .map(CompletionProposal::new)
        .toList();
  }

  private List<String> cases() {
    return desk.casebook().cases().stream().map(CaseSummary::id).map(Object::toString).toList();
  }

  private List<String> gates() {
    return desk.casebook().sites().stream().map(SiteRecord::id).toList();
  }

  private static CompletionProvider anyOf(Supplier<Collection<String>> words) {
    return context -> words.get().stream().map(CompletionProposal::new).toList();
  }

  private static List<CompletionProposal> fileNames(CompletionContext context) {
    try {
      return new FileNameCompletionProvider().apply(context);
    } catch (UncheckedIOException | InvalidPathException e) {
      return List.of(); // no such folder
    }
  }
}
