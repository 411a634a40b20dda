package yett.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Optional;

/**
 * Native libraries of others, unpacked once for all starts. By themselves they unpack a copy to the
 * temporary folder at every start, and a program that is killed leaves it there.
 */
public final class SharedLibrary {
  private SharedLibrary() {}

  /**
   * The library in a file of its own, with the very bytes of the program's archive.
   *
   * @param folder where it is kept, made if need be
   * @param name of the file
   * @param archived the library as the archive has it, or null; closed here
   * @return the folder with the file, empty if it cannot be kept there safely: whoever needs the
   *     library then unpacks it as ever
   */
  public static Optional<Path> unpacked(Path folder, String name, InputStream archived) {
    if (archived == null) {
      return Optional.empty();
    }
    try (archived) {
      byte[] library = archived.readAllBytes();
      Path own = folder.resolve(hash(library));
      OwnFiles.folder(own);
      if (OwnFiles.othersWrite(folder) || OwnFiles.isOpen(own)) {
        return Optional.empty();
      }
      Path file = own.resolve(name);
      if (!holds(file, library)) {
        if (!Room.besidesAnswers(own, library.length)) {
          return Optional.empty();
        }
        WholeFile.replaceOwn(file, library);
      }
      return Optional.of(own);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static boolean holds(Path file, byte[] library) throws IOException {
    return Files.isRegularFile(file)
        && Files.size(file) == library.length
        && Arrays.equals(Files.readAllBytes(file), library);
  }

  private static String hash(byte[] library) {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(library);
      return HexFormat.of().formatHex(hash, 0, 8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
