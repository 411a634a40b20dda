package yett.shell;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import yett.casebook.DataDirectory;
import yett.console.Block;
import yett.console.Console;
import yett.console.Input;
import yett.interview.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.knowledge.ShippedKnowledge;
import yett.rules.RuleCache;
import yett.rules.TrustedRules;

/** Opens rule bases, of the program or of a folder; rules run only if they are trusted. */
final class RuleBases {
  private static final String FILE = "trusted-rules.txt";
  private static final String KEY = "compiled-rules.key";

  private final DataDirectory directory;
  private final Supplier<Console> console;
  private TrustedRules trusted;

  RuleBases(DataDirectory directory, Supplier<Console> console) {
    this.directory = directory;
    this.console = console;
  }

  /**
   * Makes a rule base ready to reason with.
   *
   * @throws UntrustedRules if it has rules that may not run
   */
  Expertise open(KnowledgeSource source) {
    return open(RuleBase.read(source));
  }

  Expertise open(RuleBase base) {
    permit(base.rules());
    return ready(base);
  }

  /**
   * The same for people at a gate: a rule base that protects them less than the one of the program,
   * or otherwise, is used only if it is trusted.
   *
   * @throws UntrustedRules if it is not, or has rules that may not run
   */
  Expertise openForPeople(RuleBase base) {
    SortedMap<String, String> otherwise = otherSafeguards(base);
    if (!trusted().untrusted(otherwise).isEmpty()) {
      Collection<String> lacking = base.safeguards().lacks(shipped().safeguards());
      if (!console.get().interactive() || !asked(lacking)) {
        throw UntrustedRules.safeguards(lacking);
      }
      trusted().trust(otherwise);
    }
    return open(base);
  }

  /** What of a rule base has to be trusted besides its rules, as if it were a file. */
  static SortedMap<String, String> otherSafeguards(RuleBase base) {
    SortedMap<String, String> otherwise = new TreeMap<>();
    Collection<String> lacking = base.safeguards().lacks(shipped().safeguards());
    if (!lacking.isEmpty()) {
      otherwise.put("what protects people", lacking + "\n" + base.safeguards());
    }
    return otherwise;
  }

  private static RuleBase shipped() {
    return RuleBase.read(ShippedKnowledge::texts);
  }

  private boolean asked(Collection<String> lacking) {
    say(
        "This rule base lacks what protects people in the one of the program, or has it otherwise: "
            + UntrustedRules.few(lacking)
            + ". Go on only if you know who did it and why.");
    return typed();
  }

  /** The rule base that came with the program, whose rules are its own. */
  Expertise ready(RuleBase base) {
    return Expertise.of(
        base,
        new RuleCache(
            directory.cache().resolve("rules"),
            directory.settings().resolve(KEY),
            this::tellOfCompiling));
  }

  private void tellOfCompiling() {
    if (console.get().interactive()) {
      say("Preparing the rules. This takes some seconds, the first time only.");
    }
  }

  /** Asks a person at a terminal; without one, only what was said before counts. */
  private void permit(SortedMap<String, String> rules) {
    List<String> untrusted = trusted().untrusted(rules);
    if (untrusted.isEmpty()) {
      return;
    }
    if (!console.get().interactive() || !asked(untrusted)) {
      throw UntrustedRules.files(untrusted);
    }
    trusted().trust(rules);
  }

  private boolean asked(List<String> untrusted) {
    say(
        "These rules are new here or were changed: "
            + String.join(", ", untrusted)
            + ". Rules (DRL) are a program and can do whatever you can. Run them only if you know "
            + "who wrote them and have looked at them.");
    return typed();
  }

  private boolean typed() {
    Input input = console.get().ask("Type trust to go on, or Enter to leave it: ");
    return input instanceof Input.Line line && line.text().strip().equalsIgnoreCase("trust");
  }

  /** Which rules may run on this computer. */
  synchronized TrustedRules trusted() {
    if (trusted == null) {
      trusted = new TrustedRules(directory.settings().resolve(FILE), shippedRules());
    }
    return trusted;
  }

  private static Collection<String> shippedRules() {
    return ShippedKnowledge.texts().entrySet().stream()
        .filter(e -> e.getKey().endsWith(".drl"))
        .map(Map.Entry::getValue)
        .collect(Collectors.toSet());
  }

  private void say(String words) {
    console.get().show(Block.paragraph(words));
  }
}
