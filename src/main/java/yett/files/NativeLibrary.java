package yett.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;

/**
 * The native part of a library of others, unpacked once for all starts. By itself it unpacks a copy
 * to the temporary folder at every start, and a program that is killed leaves it there.
 *
 * @param property the system property that tells the library in which folder its native part is
 * @param folder where among the program's classes it stands for this system
 * @param name of the file
 */
public record NativeLibrary(String property, String folder, String name) {

  /**
   * Has one copy serve all starts. Call it before the library is used.
   *
   * @param cache what can be made again
   */
  public void share(Path cache) {
    if (System.getProperty(property) == null) { // else whoever started the program said where it is
      unpacked(cache.resolve("native"))
          .ifPresent(own -> System.setProperty(property, own.toString()));
    }
  }

  /**
   * Puts it into a folder as it is. A start whose property points there need not unpack it; on
   * another system it does.
   */
  public void unpack(Path into) throws IOException {
    Files.createDirectories(into);
    try (InputStream library = archived()) {
      if (library != null) { // else there is none for this system
        Files.copy(library, into.resolve(name));
      }
    }
  }

  /**
   * The library in a file of its own, with the very bytes of the program's archive.
   *
   * @param kept the folder for all of them, made if need be
   * @return the folder with the file, empty if it cannot be kept there safely: whoever needs the
   *     library then unpacks it as ever
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
