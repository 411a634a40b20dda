package yett.bundle;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.PublicKey;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import yett.files.WholeFile;
import yett.knowledge.KnowledgeFolder;
import yett.knowledge.KnowledgeSource;

/**
 * A rule base or an add-on in one file, signed by the firm that made it: a ZIP archive of three
 * files, the content (itself a ZIP archive), the Ed25519 signature over its bytes, and the public
 * key. The content is not read before the signature has been verified with a key that is trusted on
 * this computer.
 *
 * @param files of the folder by path, as {@link KnowledgeSource#files} gives them
 * @param notes what is new, in Markdown; empty if none were given
 */
public record Bundle(SortedMap<String, String> files, String notes) {
  /** In bytes, about fifty times the shipped rule base. */
  public static final int LARGEST = 32 << 20;

  public static final String NOTES = "notes.md";

  private static final String CONTENT = "content.zip";
  private static final String SIGNATURE = "content.zip.sig";
  private static final String KEY = "key.pem";

  /** A fixed date for the entries, so that the same content always gives the same file. */
  private static final LocalDateTime SOME_DAY = LocalDateTime.of(1980, 1, 1, 0, 0);

  /** The bytes of the file, signed with the firm's key. */
  public byte[] signed(FirmKeys keys) {
    Map<String, byte[]> inner = new LinkedHashMap<>();
    files.forEach((name, text) -> inner.put(name, text.getBytes(KnowledgeSource.charset(name))));
    if (!notes.isEmpty()) {
      inner.put(NOTES, notes.getBytes(StandardCharsets.UTF_8));
    }
    byte[] content = zip(inner);
    Map<String, byte[]> outer = new LinkedHashMap<>();
    outer.put(CONTENT, content);
    outer.put(SIGNATURE, Keys.signed(content, keys.toSign()));
    outer.put(KEY, Keys.pem(keys.toShow()).getBytes(StandardCharsets.US_ASCII));
    return zip(outer);
  }

  /**
   * Opens a bundle after verifying its signature.
   *
   * @param name of the file, for messages
   * @throws BundleException if it is no bundle, is not signed, was changed, or is signed with a key
   *     that is not trusted here
   */
  public static Bundle opened(String name, byte[] file, FirmKeys keys) {
    byte[] content = verified(name, file, keys);
    SortedMap<String, String> files = new TreeMap<>();
    String notes = "";
    for (Map.Entry<String, byte[]> entry :
        unzip(name, content, KnowledgeFolder.MOST_FILES, LARGEST).entrySet()) {
      String path = entry.getKey();
      if (path.equals(NOTES)) {
        notes = new String(entry.getValue(), StandardCharsets.UTF_8);
      } else if (KnowledgeSource.wanted(path) && staysInside(path)) {
        files.put(path, new String(entry.getValue(), KnowledgeSource.charset(path)));
      } else {
        throw new BundleException(
            name + " is signed, but holds what belongs in no rule base: \"" + path + "\".");
      }
    }
    return new Bundle(files, notes);
  }

  /**
   * Writes the content as a new folder, whole or not at all; it is first written next to its place.
   *
   * @throws UncheckedIOException if it cannot be written; says where and what to look at
   */
  public void unpackTo(Path folder) {
    try {
      Path place = folder.toAbsolutePath();
      Path part = Files.createTempDirectory(place.getParent(), ".unpacked");
      for (Map.Entry<String, String> entry : files.entrySet()) {
        Path file = part.resolve(entry.getKey());
        Files.createDirectories(file.getParent());
        WholeFile.create(file, entry.getValue().getBytes(KnowledgeSource.charset(entry.getKey())));
      }
      if (!notes.isEmpty()) {
        WholeFile.create(part.resolve(NOTES), notes);
      }
      Files.move(part, place);
    } catch (IOException e) {
      throw new UncheckedIOException(
          folder + ": it cannot be written. See that there is room, and that it may be.", e);
    }
  }

  private static byte[] verified(String name, byte[] file, FirmKeys keys) {
    Map<String, byte[]> parts = unzip(name, file, 3, LARGEST);
    if (!parts.containsKey(CONTENT)) {
      throw new BundleException(
          name + " is not a bundle of a rule base. Bundles are made with: knowledge pack FOLDER");
    }
    if (!parts.containsKey(SIGNATURE) || !parts.containsKey(KEY)) {
      throw new BundleException(
          name
              + " is not signed, so nobody can tell whose it is; nothing of it was read. Ask whoever"
              + " sent it for one made with: knowledge pack FOLDER");
    }
    List<PublicKey> shown = Keys.publicKeys(new String(parts.get(KEY), StandardCharsets.US_ASCII));
    if (shown.size() != 1 || !keys.trusts(shown.get(0))) {
      throw new BundleException(
          name
              + " is signed with a key that is not trusted on this computer"
              + (shown.size() == 1 ? " (" + Keys.name(shown.get(0)) + ")" : "")
              + "; nothing of it was read. If it is the key of your firm, get the firm's key file"
              + " from somebody whom you know, and say so with: knowledge trust KEY-FILE");
    }
    if (!Keys.isSigned(parts.get(CONTENT), parts.get(SIGNATURE), shown.get(0))) {
      throw new BundleException(
          name
              + " was changed after it was signed, or damaged on its way; nothing of it was read."
              + " Ask for it again.");
    }
    return parts.get(CONTENT);
  }

  /** Whether a path stays inside the folder. */
  private static boolean staysInside(String path) {
    return !path.startsWith("/")
        && !path.contains("\\")
        && !path.contains(":")
        && List.of(path.split("/", -1)).stream()
            .noneMatch(part -> part.isEmpty() || part.startsWith("."));
  }

  private static byte[] zip(Map<String, byte[]> entries) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes, StandardCharsets.UTF_8)) {
      for (Map.Entry<String, byte[]> entry : entries.entrySet()) {
        ZipEntry head = new ZipEntry(entry.getKey());
        head.setTimeLocal(SOME_DAY);
        zip.putNextEntry(head);
        zip.write(entry.getValue());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static Map<String, byte[]> unzip(String name, byte[] file, int most, int largest) {
    Map<String, byte[]> entries = new LinkedHashMap<>();
    long all = 0;
    try (ZipInputStream zip =
        new ZipInputStream(new ByteArrayInputStream(file), StandardCharsets.UTF_8)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        byte[] content = zip.readNBytes((int) (largest - all + 1));
        all += content.length;
        boolean twice = entries.put(entry.getName(), content) != null;
        if (all > largest || entries.size() > most || twice || entry.isDirectory()) {
          throw new BundleException(
              name + " holds more than a bundle of a rule base does; nothing of it was read.");
        }
      }
    } catch (IOException | IllegalArgumentException e) {
      throw new BundleException(
          name + " is not a bundle of a rule base, or was damaged on its way. Ask for it again.");
    }
    return entries;
  }
}
