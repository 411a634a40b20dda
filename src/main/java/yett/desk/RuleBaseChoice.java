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
 * Which rule base is used. The settings are {@code YETT_KNOWLEDGE} (a folder instead of the rule
 * base that came with the program) and {@code YETT_ADD_ONS} (folders laid over it). For a single
 * command the options {@code --knowledge} and {@code --add-on} do the same. {@code YETT_LANGUAGE}
 * and {@code --language} choose the language of its texts.
 *
 * @param usual add-ons from the setting
 * @param extra add-ons from the options, as often as wanted
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

  /** This choice with another folder or language, if one is given, and with further add-ons. */
  public RuleBaseChoice with(
      Optional<Path> other, List<Path> further, Optional<String> otherLanguage) {
    List<Path> all = new ArrayList<>(extra);
    all.addAll(further);
    return new RuleBaseChoice(
        other.or(() -> folder), usual, List.copyOf(all), otherLanguage.orElse(language));
  }

  /** Whether this is only the program's own rule base in its own language. */
  public boolean shipped() {
    return folder.isEmpty() && usual.isEmpty() && extra.isEmpty() && language.isEmpty();
  }

  /** The rule base in use. */
  public KnowledgeSource source() {
    List<Path> all = new ArrayList<>(usual);
    extra.stream().filter(path -> !all.contains(path)).forEach(all::add);
    return KnowledgeSource.layered(base(), all).in(language);
  }

  private KnowledgeSource base() {
    return folder.map(KnowledgeSource::folder).orElse(ShippedKnowledge::texts);
  }

  /**
   * The rule base in a folder that a command names, with the add-ons of the options. If the folder
   * is an add-on, it is laid over the rule base in use.
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
