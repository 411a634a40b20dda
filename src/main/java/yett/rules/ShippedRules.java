package yett.rules;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.knowledge.RuleBaseFiles;

/**
 * The program's own rules, compiled by the build. They are among the program's classes and are
 * loaded from there like all others (also from an archive of loaded classes); nothing is copied.
 */
public final class ShippedRules {
  /** One folder for each content, with the names of its models and of all its classes. */
  private static final String FOLDER = "compiled-rules";

  private static final String MODELS = "models.txt";
  private static final String CLASSES = "classes.txt";

  private ShippedRules() {}

  /** The names of the model classes for these rules, if they came with the program. */
  static Optional<List<String>> models(String key) throws IOException {
    String name = "/" + FOLDER + "/" + key + "/" + MODELS;
    try (InputStream list = ShippedRules.class.getResourceAsStream(name)) {
      return list == null
          ? Optional.empty()
          : Optional.of(new String(list.readAllBytes(), StandardCharsets.UTF_8).lines().toList());
    }
  }

  /**
   * Compiles the rules of a folder and deletes those of an earlier build; called by the build.
   *
   * @param arguments the folder with the rule base, the folder with the program's classes
   */
  public static void main(String[] arguments) throws IOException {
    // Problems of cards are reported elsewhere.
    RuleBase base =
        new RuleBaseFiles().look(KnowledgeSource.folder(Path.of(arguments[0])).files()).base();
    Path program = Path.of(arguments[1]);
    Path kept = program.resolve(FOLDER).resolve(RuleCache.key(base));
    if (!whole(kept, program)) {
      clear(program);
      unpack(RuleCache.compile(base), kept, program);
    }
  }

  /**
   * Whether all classes are still there; the compiler of the program's own classes may have deleted
   * some.
   */
  private static boolean whole(Path kept, Path program) throws IOException {
    return Files.exists(kept.resolve(MODELS))
        && Files.readAllLines(kept.resolve(CLASSES)).stream()
            .allMatch(name -> Files.exists(program.resolve(name)));
  }

  private static void clear(Path program) throws IOException {
    Path folder = program.resolve(FOLDER);
    if (!Files.exists(folder)) {
      return;
    }
    List<Path> old;
    try (Stream<Path> all = Files.walk(folder)) {
      old = all.sorted((a, b) -> b.compareTo(a)).toList();
    }
    for (Path path : old) {
      if (path.endsWith(CLASSES)) {
        for (String name : Files.readAllLines(path)) {
          Files.deleteIfExists(program.resolve(name));
        }
      }
      Files.delete(path);
    }
  }

  private static void unpack(byte[] compiled, Path kept, Path program) throws IOException {
    List<String> classes = new ArrayList<>();
    List<String> models = List.of();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(compiled))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (entry.getName().equals(CompiledRules.MODEL_LIST)) {
          models = CompiledRules.models(zip.readAllBytes());
        } else if (entry.getName().endsWith(".class")) {
          Path file = program.resolve(entry.getName());
          Files.createDirectories(file.getParent());
          Files.write(file, zip.readAllBytes());
          classes.add(entry.getName());
        }
      }
    }
    Files.createDirectories(kept);
    Files.write(kept.resolve(CLASSES), classes);
    Files.write(kept.resolve(MODELS), models); // written last, because it marks the set as complete
  }
}
