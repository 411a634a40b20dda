package yett.command.knowledge;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.yaml.YAMLMapper;
import yett.command.common.UsageException;

/** Reads a file of sayings: one on each line, or a YAML list with "say". */
final class SaidFile {
  private SaidFile() {}

  static List<String> read(Path file) {
    String text;
    try {
      text = Files.readString(file);
    } catch (NoSuchFileException e) {
      throw new UsageException("There is no file " + file + ".");
    } catch (CharacterCodingException e) {
      throw new UsageException(file + " is not UTF-8 text. Save it as UTF-8.");
    } catch (IOException e) {
      throw new UsageException(file + " cannot be read: " + e.getMessage() + ".");
    }
    String name = file.toString().toLowerCase(Locale.ROOT);
    List<String> sayings =
        name.endsWith(".yaml") || name.endsWith(".yml") ? yaml(file, text) : lines(text);
    if (sayings.isEmpty()) {
      throw new UsageException(file + " has no sayings. Write one a line.");
    }
    return sayings;
  }

  private static List<String> lines(String text) {
    return text.lines().map(String::strip).filter(l -> !l.isEmpty() && !l.startsWith("#")).toList();
  }

  private static List<String> yaml(Path file, String text) {
    List<String> sayings = new ArrayList<>();
    try {
      JsonNode list = new YAMLMapper().readTree(text);
      int number = 0;
      for (JsonNode one : list) {
        number++;
        if (!one.path("say").isString()) {
          throw new UsageException(
              file + ": entry " + number + " has no \"say\" with words. Write - say: WORDS.");
        }
        sayings.add(one.get("say").stringValue());
      }
    } catch (JacksonException e) {
      throw new UsageException(
          file
              + ":"
              + e.getLocation().getLineNr()
              + ":"
              + e.getLocation().getColumnNr()
              + ": "
              + e.getOriginalMessage().lines().findFirst().orElse("cannot be read"));
    }
    return sayings;
  }
}
