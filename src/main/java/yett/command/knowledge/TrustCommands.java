package yett.command.knowledge;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.springframework.shell.core.command.annotation.Arguments;
import org.springframework.shell.core.command.annotation.Command;
import yett.bench.LineDifference;
import yett.bundle.BundleException;
import yett.bundle.FirmKeys;
import yett.command.common.Completions;
import yett.command.common.ExitException;
import yett.command.common.Prompt;
import yett.command.common.Sysexits;
import yett.command.common.UsageException;
import yett.console.Block;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;
import yett.desk.RuleBases;
import yett.knowledge.RuleBase;
import yett.rules.TrustedRules;
import yett.wording.Wording;

/** {@code knowledge trust}: decides which rules may run here, and whose bundles are used. */
public record TrustCommands(Desk desk, Console console, StandardStreams output) {
  private static final String TRUST =
      "Usage: knowledge trust FOLDER, or KEY-FILE. Shows the rules to be trusted, or"
          + " what has changed in them, and asks you at a terminal. Cards and tables are"
          + " data; rules are a program and can do whatever you can: trust only rules whose"
          + " author you know. A folder that replaces the program's rule base and protects"
          + " people differently has to be trusted too before it guides anybody. Trust holds"
          + " on this computer until one of the rules changes. Trusting a file with a firm's"
          + " public key allows bundles signed with that key to be unpacked here (knowledge"
          + " unpack) and their rules to run.";

  @Command(
      name = {"knowledge", "trust"},
      description = "allow the rules of a folder to run, or a firm's bundles to be used",
      help = TRUST,
      completionProvider = Completions.FILES)
  public void trust(@Arguments List<String> words) {
    UsageException.when(words.size() != 1, TRUST);
    Path named = Path.of(words.get(0));
    if (Files.isRegularFile(named)) {
      key(named);
      return;
    }
    RuleBase base = RuleBase.read(desk.choice().source(named));
    TrustedRules trusted = desk.ruleBases().trusted();
    SortedMap<String, String> all = RuleBases.otherSafeguards(base);
    all.putAll(base.rules());
    List<String> untrusted = trusted.untrusted(all);
    if (untrusted.isEmpty()) {
      console.say("All rules of this folder are trusted already.");
      return;
    }
    if (untrusted.contains(RuleBases.SAFEGUARDS)) {
      console.show(
          Block.heading(Wording.capital(RuleBases.SAFEGUARDS)),
          Block.paragraph(
              "Missing, or different from the program's own rule base: "
                  + String.join(", ", RuleBases.lacking(base))
                  + "."));
    }
    untrusted.stream()
        .filter(base.rules()::containsKey)
        .forEach(name -> show(name, all.get(name), trusted.lastTrusted(name)));
    agree();
    trusted.trust(all);
    console.say("Trusted from now on: " + String.join(", ", untrusted) + ".");
  }

  /** Shows what is to be trusted, or what changed since it was trusted. */
  private void show(String name, String text, Optional<String> before) {
    console.show(
        Block.heading(name + (before.isPresent() ? ": what changed since it was trusted" : "")));
    before
        .map(last -> LineDifference.of(last, text))
        .orElse(text.lines().toList())
        .forEach(line -> output.print("  " + line));
  }

  /** Trusts the key of a firm, whose bundles are used from now on. */
  private void key(Path file) {
    try {
      FirmKeys.Named key = FirmKeys.read(file);
      if (desk.keys().trusts(key.key())) {
        console.say("This key is trusted already: " + key.name() + ".");
        return;
      }
      console.show(
          Block.heading("The key in " + file),
          Block.paragraph(key.name()),
          Block.paragraph(
              "Compare these letters and figures with those that the firm gave you by another"
                  + " route, such as the telephone. Whoever has this key can send rules (DRL) to this"
                  + " computer, which are programs and can do whatever you can."));
      agree();
      desk.keys().trust(key.key());
      console.say("Trusted from now on: bundles signed with this key.");
    } catch (BundleException e) {
      output.tell(e.getMessage());
      throw new ExitException(Sysexits.DATA);
    }
  }

  /**
   * Ends the command unless the person agrees. In a pipe, the command itself counts as agreement.
   */
  private void agree() {
    if (console.interactive() && !agreed()) {
      console.say("Nothing more is trusted than before.");
      throw new ExitException(Sysexits.NO_PERMISSION);
    }
  }

  private boolean agreed() {
    return Prompt.forWords(console)
        .until(
            "Do you know who wrote this, and trust it? yes or no (Enter: no)> ",
            List.of("yes", "no"),
            line ->
                Prompt.word(line, List.of("", "yes", "no"))
                    .map(i -> Prompt.Reading.of(i == 1))
                    .orElse(Prompt.Reading.again("Type yes or no.")))
        .orElse(false);
  }
}
