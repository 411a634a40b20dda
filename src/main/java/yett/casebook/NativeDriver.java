package yett.casebook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.sqlite.util.LibraryLoaderUtil;
import yett.files.SharedLibrary;

/** The native part of the embedded database's driver. */
public final class NativeDriver {
  private static final String PATH = "org.sqlite.lib.path";

  private NativeDriver() {}

  /** Has one copy serve all starts, kept among what can be made again. Call it before opening. */
  public static void share(Path cache) {
    if (System.getProperty(PATH) != null) {
      return; // whoever started the program said where it is
    }
    SharedLibrary.unpacked(cache.resolve("native"), name(), archived())
        .ifPresent(folder -> System.setProperty(PATH, folder.toString()));
  }

  /**
   * Puts it into a folder, for the system that this runs on. A start that is pointed there with
   * {@code org.sqlite.lib.path} need not unpack it; on another system it does.
   */
  public static void unpack(Path folder) throws IOException {
    Files.createDirectories(folder);
    try (InputStream library = archived()) {
      if (library != null) { // else the driver has none for this system
        Files.copy(library, folder.resolve(name()));
      }
    }
  }

  private static String name() {
    return LibraryLoaderUtil.getNativeLibName();
  }

  private static InputStream archived() {
    return NativeDriver.class.getResourceAsStream(
        LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name());
  }
}
