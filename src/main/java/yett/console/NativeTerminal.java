package yett.console;

import java.nio.file.Path;
import org.jline.nativ.OSInfo;
import yett.files.SharedLibrary;

/** The native part of the terminal library. */
public final class NativeTerminal {
  private static final String PATH = "library.jline.path";

  private NativeTerminal() {}

  /** Has one copy serve all starts, kept among what can be made again. Call it before a console. */
  public static void share(Path cache) {
    if (System.getProperty(PATH) != null) {
      return; // whoever started the program said where it is
    }
    String name = System.mapLibraryName("jlinenative");
    String place = "/org/jline/nativ/" + OSInfo.getNativeLibFolderPathForCurrentOS() + "/" + name;
    SharedLibrary.unpacked(
            cache.resolve("native"), name, NativeTerminal.class.getResourceAsStream(place))
        .ifPresent(folder -> System.setProperty(PATH, folder.toString()));
  }
}
