package yett.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import yett.files.SealedFiles;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;

/**
 * Keeps compiled rules in a folder, so that only the first start after a change has to compile.
 * There is one file for each content ever compiled; its name is the hash of the rules' text and of
 * the classes that they were compiled against.
 */
public final class RuleCache {
  private static final List<Class<?>> COMPILED_AGAINST =
      List.of(
          Fact.class,
          Conclusion.class,
          Reason.class,
          Interpretation.class,
          Row.class,
          SiteValues.class,
          Say.class,
          Cause.class,
          Check.class,
          History.class,
          Repair.class);

  private final SealedFiles kept;
  private final Runnable beforeCompiling;

  /**
   * @param folder created when needed; if it cannot be written, rules are compiled at each start
   * @param key file with the secret that marks compiled rules as this user's own
   * @param beforeCompiling called before rules are compiled, which takes seconds
   */
  public RuleCache(Path folder, Path key, Runnable beforeCompiling) {
    this.kept = new SealedFiles(folder, key);
    this.beforeCompiling = beforeCompiling;
  }

  /** With the secret in the folder itself, for a folder that nobody else can write to. */
  public RuleCache(Path folder) {
    this(folder, folder.resolve("rules.key"), () -> {});
  }

  private static boolean empty(RuleBase base) {
    return base.rules().isEmpty() && base.tables().isEmpty();
  }

  private static String name(String key) {
    return key + ".kjar";
  }

  KieBase load(RuleBase base) {
    if (empty(base)) {
      return KieBaseBuilder.createKieBaseFromModel(List.<Model>of());
    }
    String key = key(base);
    Optional<KieBase> shipped = shipped(key);
    if (shipped.isPresent()) {
      return shipped.get();
    }
    Optional<byte[]> compiled = kept.get(name(key));
    if (compiled.isPresent()) {
      try {
        return CompiledRules.load(compiled.get());
      } catch (IOException | ReflectiveOperationException | LinkageError e) {
        // Written by another version of a library: compile again and overwrite it.
      }
    }
    beforeCompiling.run();
    try {
      byte[] fresh = compile(base);
      kept.put(name(key), fresh);
      return CompiledRules.load(fresh);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read compiled rules", e);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot load compiled rules", e);
    }
  }

  /** The program's own rules, loaded from where the program is installed, without a copy. */
  private static Optional<KieBase> shipped(String key) {
    try {
      Optional<List<String>> models = ShippedRules.models(key);
      return models.isEmpty()
          ? Optional.empty()
          : Optional.of(CompiledRules.load(models.get(), RuleCache.class.getClassLoader()));
    } catch (IOException | ReflectiveOperationException e) {
      throw new IllegalStateException("cannot load the program's own rules", e);
    }
  }

  /** All sources for the compiler: the rule files, and the program's own rules for tables. */
  static SortedMap<String, String> sources(RuleBase base) {
    SortedMap<String, String> sources = new TreeMap<>(base.rules());
    sources.put("/tables.drl", TableRules.TEXT); // no path in a rule base begins with a slash
    return sources;
  }

  static byte[] compile(RuleBase base) {
    return RuleCompiler.compile(sources(base));
  }

  static String key(RuleBase base) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      sources(base)
          .forEach(
              (name, text) ->
                  digest.update((name + "\0" + text + "\0").getBytes(StandardCharsets.UTF_8)));
      for (Class<?> type : COMPILED_AGAINST) {
        update(digest, type);
        for (Class<?> inner : type.getDeclaredClasses()) {
          update(digest, inner);
        }
      }
      digest.update(drools().getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest.digest(), 0, 16);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Adds a class to the hash, because compiled rules fit only the exact classes that they were
   * compiled against.
   */
  private static void update(MessageDigest digest, Class<?> type) {
    String file = type.getName().substring(type.getName().lastIndexOf('.') + 1) + ".class";
    try (InputStream bytes = type.getResourceAsStream(file)) {
      digest.update(
          bytes == null ? type.getName().getBytes(StandardCharsets.UTF_8) : bytes.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + type, e);
    }
  }

  private static String drools() {
    return String.valueOf(Model.class.getPackage().getImplementationVersion());
  }
}
