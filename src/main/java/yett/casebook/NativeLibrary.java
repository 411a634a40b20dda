package yett.casebook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;

/** The native part of the embedded database. */
public final class NativeLibrary {
  private NativeLibrary() {}

  /**
   * Puts it into a folder, for the system that this runs on. A start that is pointed there with
   * {@code org.sqlite.lib.path} need not unpack it; on another system it does.
   */
  public static void unpack(Path folder) throws IOException {
    String name = LibraryLoaderUtil.getNativeLibName();
    String place = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
    Files.createDirectories(folder);
    try (InputStream library = SQLiteJDBCLoader.class.getResourceAsStream(place)) {
      if (library != null) { // else the database has none for this system
        Files.copy(library, folder.resolve(name));
      }
    }
  }
}
