package yett.rules;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import yett.files.BoundedFile;
import yett.files.OwnFiles;
import yett.files.Sha256;
import yett.files.WholeFile;

/**
 * Decides which rule files (DRL) may run. Rules are programs: they can do whatever their user can.
 * So only those run that came with the program or that the user has trusted. Trust is by content: a
 * changed file is a new file.
 */
public final class TrustedRules {
  /** Largest rule file (bytes): thousands of lines. */
  private static final int LARGEST = 1 << 20;

  /** Folder beside the list with each trusted text under its hash, to show what changed since. */
  private static final String TEXTS = "trusted-rules";

  private final Path file;
  private final Map<String, String> lastByName = new HashMap<>();
  private final Set<String> trusted = new HashSet<>();

  /**
   * @param file in the user's settings, one line for each trusted file: its hash and, for people,
   *     its name; created when needed
   * @param shipped texts of the rule files that came with the program
   */
  public TrustedRules(Path file, Collection<String> shipped) {
    this.file = file;
    shipped.forEach(text -> trusted.add(hash(text)));
    if (!Files.exists(file)) {
      return;
    }
    if (!OwnFiles.isOurs(file)) {
      throw new UncheckedIOException(
          "The list of trusted rules "
              + file
              + " is not used: it, or its folder, belongs to somebody else or can be written by"
              + " others. Make both yours alone (chmod go-w), or delete the list.",
          new IOException("not ours alone"));
    }
    try {
      BoundedFile.text(file, LARGEST).lines().forEach(this::remember);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read which rules are trusted in " + file, e);
    }
  }

  private void remember(String line) {
    String[] parts = line.split("  ", 2);
    trusted.add(parts[0]);
    if (parts.length == 2) {
      lastByName.put(parts[1], parts[0]);
    }
  }

  /** The text of a file of this name as it was last trusted, if it was kept. */
  public Optional<String> lastTrusted(String name) {
    String hash = lastByName.get(shown(name));
    Path kept = hash == null ? file : text(hash);
    if (hash == null || !OwnFiles.isOurs(kept) || !Files.isRegularFile(kept)) {
      return Optional.empty();
    }
    try {
      return Optional.of(BoundedFile.text(kept, LARGEST)).filter(text -> hash(text).equals(hash));
    } catch (IOException e) {
      return Optional.empty(); // the caller then shows the whole text
    }
  }

  private Path text(String hash) {
    return file.resolveSibling(TEXTS).resolve(hash);
  }

  private static String shown(String name) {
    return name.replaceAll("\\p{Cntrl}", "?");
  }

  /**
   * Names of the files that may not run.
   *
   * @param rules texts by path
   */
  public List<String> untrusted(SortedMap<String, String> rules) {
    return rules.entrySet().stream()
        .filter(e -> !trusted.contains(hash(e.getValue())))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** Records that the user trusts these files as they are now. */
  public void trust(SortedMap<String, String> rules) {
    List<String> lines = new ArrayList<>();
    for (String name : untrusted(rules)) {
      lines.add(hash(rules.get(name)) + "  " + shown(name) + "\n");
    }
    try {
      OwnFiles.folder(file.toAbsolutePath().getParent());
      byte[] bytes = String.join("", lines).getBytes(StandardCharsets.UTF_8);
      try (FileChannel to = OwnFiles.open(file, StandardOpenOption.APPEND)) {
        to.write(ByteBuffer.wrap(bytes));
      }
      keepTexts(rules);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write which rules are trusted to " + file, e);
    }
    lines.forEach(line -> remember(line.stripTrailing()));
    rules.values().forEach(text -> trusted.add(hash(text)));
  }

  private void keepTexts(SortedMap<String, String> rules) throws IOException {
    OwnFiles.folder(file.resolveSibling(TEXTS));
    for (String name : untrusted(rules)) {
      byte[] text = rules.get(name).getBytes(StandardCharsets.UTF_8);
      WholeFile.replaceOwn(text(hash(rules.get(name))), text);
    }
  }

  private static String hash(String text) {
    return Sha256.hex(text.getBytes(StandardCharsets.UTF_8), Sha256.WHOLE);
  }
}
