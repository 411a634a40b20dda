package yett.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * The native part of a third-party library, unpacked once for all starts. Left alone, the library
 * unpacks a copy into the temporary folder at every start, which stays there if the program is
 * killed.
 *
 * @param property the system property that tells the library the folder of its native part
 * @param folder where the native part for this system is among the program's classes
 * @param name of the file
 */
public record NativeLibrary(String property, String folder, String name) {

  /**
   * Makes all starts use one copy. Call it before the library is used.
   *
   * @param cache directory for data that can be made again
   */
  public void share(Path cache) {
    if (System.getProperty(property) == null) { // else the launcher has set it
      unpacked(cache.resolve("native"))
          .ifPresent(own -> System.setProperty(property, own.toString()));
    }
  }

  /**
   * Copies it into a folder. A start whose property points there does not unpack it, except on
   * another system.
   */
  public void unpack(Path into) throws IOException {
    Files.createDirectories(into);
    try (InputStream library = archived()) {
      if (library != null) { // null if there is none for this system
        Files.copy(library, into.resolve(name));
      }
    }
  }

  /**
   * The library in a file of its own, byte for byte as in the program's archive.
   *
   * @param kept the folder for all of them, made if necessary
   * @return the folder with the file; empty if it cannot be kept there safely. Then the library
   *     unpacks itself as usual
   */
  Optional<Path> unpacked(Path kept) {
    try (InputStream archived = archived()) {
      if (archived == null) {
        return Optional.empty();
      }
      byte[] library = archived.readAllBytes();
      Path own = kept.resolve(Sha256.hex(library, 8));
      OwnFiles.folder(own);
      if (OwnFiles.othersWrite(kept) || OwnFiles.isOpen(own)) {
        return Optional.empty();
      }
      Path file = own.resolve(name);
      if (!holds(file, library)) {
        if (!DiskRoom.besidesAnswers(own, library.length)) {
          return Optional.empty();
        }
        WholeFile.replaceOwn(file, library);
      }
      return Optional.of(own);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private InputStream archived() {
    return NativeLibrary.class.getResourceAsStream(folder + "/" + name);
  }

  private static boolean holds(Path file, byte[] library) throws IOException {
    return Files.isRegularFile(file)
        && Files.size(file) == library.length
        && Arrays.equals(Files.readAllBytes(file), library);
  }
}
