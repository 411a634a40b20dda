package yett.meaning;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import yett.files.NativeLibrary;

/**
 * Finds the unpacked native parts of the model's library, which would otherwise unpack them at
 * every start.
 */
final class NativeParts {
  /** System property with the folder of the native parts, set by the launcher. */
  private static final String OURS = "yett.native";

  private static final String PATH = "onnxruntime.native.path";

  private NativeParts() {}

  static List<NativeLibrary> all() {
    return List.of(part("onnxruntime"), part("onnxruntime4j_jni"));
  }

  private static NativeLibrary part(String name) {
    return new NativeLibrary(
        PATH, "/ai/onnxruntime/native/" + system(), System.mapLibraryName(name));
  }

  private static String system() {
    String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
    String processor = System.getProperty("os.arch").toLowerCase(Locale.ROOT);
    String system = name.contains("win") ? "win" : name.contains("mac") ? "osx" : "linux";
    boolean arm = processor.contains("aarch64") || processor.contains("arm64");
    return system + (arm ? "-aarch64" : "-x64");
  }

  /**
   * Tells the library where its native parts are. They are missing if the program was built on
   * another system.
   */
  static void find() {
    String folder = System.getProperty(OURS);
    if (folder != null
        && System.getProperty(PATH) == null
        && all().stream().allMatch(l -> Files.isRegularFile(Path.of(folder, l.name())))) {
      System.setProperty(PATH, folder);
    }
  }
}
