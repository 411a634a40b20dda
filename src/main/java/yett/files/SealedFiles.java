package yett.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Stores results in files that can be computed again. Compiled rules are among them; they are
 * loaded as classes and can do anything that their user can. Each file therefore has a seal that
 * only this user's key can make. A file without a valid seal is ignored.
 */
public final class SealedFiles {
  private static final String SEAL = "HmacSHA256";
  private static final int SEAL_BYTES = 32;
  private static final int KEY_BYTES = 32;
  private static final int LARGEST = 64 << 20;

  private final Path folder;
  private final Path keyFile;

  /**
   * @param keyFile made when it is needed; if it cannot be kept readable by the user only, nothing
   *     is stored
   */
  public SealedFiles(Path folder, Path keyFile) {
    this.folder = folder;
    this.keyFile = keyFile;
  }

  /** What was stored under a name, if it is this user's and unchanged. */
  public Optional<byte[]> get(String name) {
    Path file = folder.resolve(name);
    if (!OwnFiles.isOurs(file) || !Files.isRegularFile(file)) {
      return Optional.empty();
    }
    try (InputStream in = Files.newInputStream(file)) {
      byte[] all = in.readNBytes(LARGEST);
      Optional<byte[]> key = key();
      if (all.length < SEAL_BYTES || key.isEmpty()) {
        return Optional.empty();
      }
      byte[] content = Arrays.copyOfRange(all, SEAL_BYTES, all.length);
      boolean ours =
          MessageDigest.isEqual(Arrays.copyOf(all, SEAL_BYTES), seal(key.get(), name, content));
      return ours ? Optional.of(content) : Optional.empty();
    } catch (IOException e) {
      return Optional.empty(); // it can be made again
    }
  }

  /** Stores something for the next start, if that is possible. */
  public void put(String name, byte[] content) {
    try {
      makeKey();
      Optional<byte[]> key = key();
      if (key.isPresent()) {
        byte[] all = Arrays.copyOf(seal(key.get(), name, content), SEAL_BYTES + content.length);
        System.arraycopy(content, 0, all, SEAL_BYTES, content.length);
        Path file = folder.resolve(name);
        if (DiskRoom.besidesAnswers(file, all.length)) {
          OwnFiles.folder(folder);
          WholeFile.replaceOwn(file, all);
        }
      }
    } catch (IOException e) {
      return; // worked out again at the next start
    }
  }

  /** Deletes all but the files that were written last. */
  public void tidy(int most) {
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> old =
          files
              .filter(Files::isRegularFile)
              .sorted(Comparator.comparing(SealedFiles::written).reversed())
              .skip(most)
              .toList();
      for (Path file : old) {
        Files.deleteIfExists(file);
      }
    } catch (IOException e) {
      return; // they stay until the next time
    }
  }

  private static FileTime written(Path file) {
    try {
      return Files.getLastModifiedTime(file);
    } catch (IOException e) {
      return FileTime.fromMillis(0);
    }
  }

  private void makeKey() throws IOException {
    if (OwnFiles.isSecret(keyFile) && Files.size(keyFile) == KEY_BYTES) {
      return;
    }
    byte[] key = new byte[KEY_BYTES];
    new SecureRandom().nextBytes(key);
    OwnFiles.folder(keyFile.toAbsolutePath().getParent());
    WholeFile.replaceOwn(keyFile, key);
  }

  private Optional<byte[]> key() throws IOException {
    if (!OwnFiles.isSecret(keyFile)) {
      return Optional.empty();
    }
    byte[] key = Files.readAllBytes(keyFile);
    return key.length == KEY_BYTES ? Optional.of(key) : Optional.empty();
  }

  /**
   * The seal of a file. It includes the name, so that the seal of one file does not fit another.
   */
  private static byte[] seal(byte[] key, String name, byte[] content) {
    try {
      Mac mac = Mac.getInstance(SEAL);
      mac.init(new SecretKeySpec(key, SEAL));
      mac.update((name + "\0").getBytes(StandardCharsets.UTF_8));
      return mac.doFinal(content);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }
}
