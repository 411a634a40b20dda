package yett.desk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import yett.casebook.DataDirectory;
import yett.files.SealedFiles;
import yett.interview.course.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.knowledge.ShippedKnowledge;
import yett.rules.RuleCache;
import yett.rules.RuleCheck;
import yett.rules.TrustedRules;

/** Opens rule bases, the program's own or from a folder. Rules run only if they are trusted. */
public final class RuleBases {
  /** Names the part of a rule base that has to be trusted besides its rules. */
  public static final String SAFEGUARDS = "what protects people";

  private static final String FILE = "trusted-rules.txt";
  private static final int KEPT = 3;
  private static final String KEY = "compiled-rules.key";

  private final DataDirectory directory;
  private final Consent consent;
  private TrustedRules trusted;

  /**
   * The rule bases opened last, by their content, for somebody who tries one change after the
   * other.
   */
  private final Map<String, Expertise> opened =
      new LinkedHashMap<>(8, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Expertise> eldest) {
          return size() > KEPT;
        }
      };

  public RuleBases(DataDirectory directory, Consent consent) {
    this.directory = directory;
    this.consent = consent;
  }

  /**
   * Prepares a rule base for reasoning.
   *
   * @throws UntrustedRules if it has rules that may not run
   */
  public Expertise open(KnowledgeSource source) {
    return open(RuleBase.read(source));
  }

  public Expertise open(RuleBase base) {
    permit(base.rules());
    synchronized (opened) {
      String content = base.fingerprint() + " " + base.edition().language();
      return opened.computeIfAbsent(content, c -> ready(base));
    }
  }

  /**
   * The same for work at a gate. A rule base that lacks or changes a safeguard of the program's own
   * is used only if it is trusted.
   *
   * @throws UntrustedRules if it is not trusted, or has rules that may not run
   */
  public Expertise openForPeople(RuleBase base) {
    SortedMap<String, String> otherwise = otherSafeguards(base);
    if (!trusted().untrusted(otherwise).isEmpty()) {
      Collection<String> lacking = lacking(base);
      if (!consent.toBeLed(lacking)) {
        throw UntrustedRules.safeguards(lacking);
      }
      trusted().trust(otherwise);
    }
    return open(base);
  }

  /**
   * The safeguards of a rule base other than its rules, in the form of a file that can be trusted.
   */
  public static SortedMap<String, String> otherSafeguards(RuleBase base) {
    SortedMap<String, String> otherwise = new TreeMap<>();
    Collection<String> lacking = lacking(base);
    if (!lacking.isEmpty()) {
      otherwise.put(SAFEGUARDS, lacking + "\n" + base.safeguards());
    }
    return otherwise;
  }

  /** The safeguards of the program's rule base that are missing or changed in this one. */
  public static Collection<String> lacking(RuleBase base) {
    RuleBase shipped = RuleBase.read(ShippedKnowledge.in(base.edition().language()));
    return base.safeguards().lacks(shipped.safeguards());
  }

  /** Prepares the program's own rule base, whose rules need no trust. */
  public Expertise ready(RuleBase base) {
    return Expertise.of(
        base,
        new RuleCache(
            directory.cache().resolve("rules"), directory.settings().resolve(KEY), consent::waits));
  }

  /** Asks for consent to rules that were not allowed before. */
  private void permit(SortedMap<String, String> rules) {
    List<String> untrusted = trusted().untrusted(rules);
    if (untrusted.isEmpty()) {
      return;
    }
    if (!consent.toRun(untrusted)) {
      throw UntrustedRules.files(untrusted);
    }
    trusted().trust(rules);
  }

  /**
   * Finds what is wrong with the rules of a folder: whether they have the form of rules, and what
   * the compiler says of those that are trusted. Rules that came with the program are not checked.
   */
  public List<Problem> ruleProblems(RuleBase base) {
    SortedMap<String, String> own = ownRules(base);
    List<Problem> problems = new ArrayList<>();
    own.forEach((file, text) -> problems.addAll(RuleCheck.grammar(file, text)));
    own.keySet().removeAll(problems.stream().map(Problem::file).toList());
    own.keySet().removeAll(trusted().untrusted(own));
    if (!own.isEmpty()) {
      SortedMap<String, String> shipped = new TreeMap<>(base.rules());
      shipped.keySet().removeAll(ownRules(base).keySet());
      problems.addAll(RuleCheck.compiled(own, shipped));
    }
    return problems;
  }

  /** Files of rules that nobody has trusted yet; they are not compiled. */
  public List<String> untrusted(RuleBase base) {
    return trusted().untrusted(base.rules());
  }

  private static SortedMap<String, String> ownRules(RuleBase base) {
    SortedMap<String, String> own = new TreeMap<>(base.rules());
    own.values().removeAll(shippedRules());
    return own;
  }

  /**
   * The store for results computed from rule bases, kept between starts and separate from the
   * rules.
   */
  public SealedFiles keptRuns() {
    return new SealedFiles(directory.cache().resolve("runs"), directory.settings().resolve(KEY));
  }

  /** The rules that may run on this computer. */
  public synchronized TrustedRules trusted() {
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
}
