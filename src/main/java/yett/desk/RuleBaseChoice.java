package yett.desk;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import yett.knowledge.AddOn;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.ShippedKnowledge;

/**
 * Which rule base is worked with: by the settings {@code YETT_KNOWLEDGE} (a folder in place of the
 * rule base that came with the program) and {@code YETT_ADD_ONS} (folders laid over it), or for one
 * command by the options {@code --knowledge} and {@code --add-on}. {@code YETT_LANGUAGE} and {@code
 * --language} say in which language its texts are wanted.
 *
 * @param usual add-ons by the setting
 * @param extra add-ons by the option, as often as wanted
 * @param language of the texts; empty for the cards' own
 */
public record RuleBaseChoice(
    Optional<Path> folder, List<Path> usual, List<Path> extra, String language) {
  public static RuleBaseChoice of(Map<String, String> environment) {
    String addOns = environment.getOrDefault("YETT_ADD_ONS", "");
    return new RuleBaseChoice(
        Optional.ofNullable(environment.get("YETT_KNOWLEDGE"))
            .filter(s -> !s.isBlank())
            .map(Path::of),
        Stream.of(addOns.split(File.pathSeparator))
            .filter(s -> !s.isBlank())
            .map(Path::of)
            .toList(),
        List.of(),
        environment.getOrDefault("YETT_LANGUAGE", "").strip());
  }

  /** The same with another folder or language, if there is one, and with further add-ons. */
  public RuleBaseChoice with(
      Optional<Path> other, List<Path> further, Optional<String> otherLanguage) {
    List<Path> all = new ArrayList<>(extra);
    all.addAll(further);
    return new RuleBaseChoice(
        other.or(() -> folder), usual, List.copyOf(all), otherLanguage.orElse(language));
  }

  /** Whether this is the program's own rule base, in its own words, and nothing else. */
  public boolean shipped() {
    return folder.isEmpty() && usual.isEmpty() && extra.isEmpty() && language.isEmpty();
  }

  /** The rule base that is worked with. */
  public KnowledgeSource source() {
    List<Path> all = new ArrayList<>(usual);
    extra.stream().filter(path -> !all.contains(path)).forEach(all::add);
    return KnowledgeSource.layered(base(), all).in(language);
  }

  private KnowledgeSource base() {
    return folder.map(KnowledgeSource::folder).orElse(ShippedKnowledge::texts);
  }

  /**
   * The rule base in a folder that a command names, with the add-ons of the options; an add-on lies
   * over the rule base that is worked with.
   */
  public KnowledgeSource source(Path named) {
    if (!Files.exists(named.resolve(AddOn.FILE))) {
      return KnowledgeSource.layered(KnowledgeSource.folder(named), extra).in(language);
    }
    List<Path> all = new ArrayList<>(usual);
    all.addAll(extra);
    if (!all.contains(named)) {
      all.add(named);
    }
    return KnowledgeSource.layered(base(), all).in(language);
  }
}
