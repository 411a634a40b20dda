package yett.casebook;

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
    String name = LibraryLoaderUtil.getNativeLibName();
    String place = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
    SharedLibrary.unpacked(
            cache.resolve("native"), name, NativeDriver.class.getResourceAsStream(place))
        .ifPresent(folder -> System.setProperty(PATH, folder.toString()));
  }
}
