package yett.trial;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import yett.interview.course.Expertise;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

/** A folder with a rule base of a few cards and two cases, for tests to change. */
final class SmallFolder {
  private static final String CASES =
      """
      case: slack
      person: technician
      site: {opening: 6 m}
      answers:
        danger-person: nobody
        display-lit: steady
        noise-kind: slap
        held-open: not-meant
        chain-sag: [190 mm, 84 mm]
        battery-rest-voltage: 25.9 V
        charging-voltage: 27.4 V
        limits-hold: pass
      truth: [chain-slack]
      repairs: [tighten-chain]
      ---
      case: dark-display
      person: caller
      complaints: [does-nothing]
      answers: {danger-person: nobody, display-lit: dark, noise-kind: usual, held-open: not-meant}
      expect: batteries-low
      """;

  private final Path folder;

  SmallFolder(Path folder) {
    this.folder = folder;
    KnowledgeSource.folder(Path.of("src/test/resources/small-rule-base"))
        .files()
        .forEach(this::write);
    Map<String, String> shipped = KnowledgeSource.folder(Path.of("knowledge")).files();
    write("rules/core.drl", shipped.get("rules/core.drl"));
    write("harbour.case.yaml", CASES);
  }

  void write(String name, String text) {
    try {
      Path file = folder.resolve(name);
      Files.createDirectories(file.getParent());
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Changes words of a file that must stand there. */
  SmallFolder change(String name, String words, String others) {
    String text = KnowledgeSource.folder(folder).files().get(name);
    if (!text.contains(words)) {
      throw new IllegalArgumentException(name + " does not say: " + words);
    }
    write(name, text.replace(words, others));
    return this;
  }

  /** The case of the slack chain with the complaint that tells most. */
  SmallFolder noisy() {
    return change("harbour.case.yaml", "opening: 6 m}", "opening: 6 m}\ncomplaints: [noisy-chain]");
  }

  String text(String name) {
    return KnowledgeSource.folder(folder).files().get(name);
  }

  Path path() {
    return folder;
  }

  Expertise expertise() {
    return Expertise.of(
        RuleBase.read(KnowledgeSource.folder(folder)), Path.of("target/rule-cache"));
  }

  CasesBeside cases(String only) {
    KnowledgeSource source = KnowledgeSource.folder(folder);
    return CasesBeside.of(source.files(), RuleBase.read(source), only);
  }

  Comparison.Side side(String only) {
    return new Comparison.Side(expertise(), cases(only));
  }

  Tested test(String only) {
    return Tested.run(expertise(), folder, cases(only).cases(), only.isEmpty(), () -> {});
  }
}
