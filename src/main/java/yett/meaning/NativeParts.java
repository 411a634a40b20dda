package yett.meaning;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import yett.files.NativeLibrary;

/** The native parts of the model's library, which it would unpack at every start otherwise. */
final class NativeParts {
  /** Where the folder of the program has them, as its launcher says. */
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

  /** On another system than the one that built the program there are none there. */
  static void find() {
    String folder = System.getProperty(OURS);
    if (folder != null
        && System.getProperty(PATH) == null
        && all().stream().allMatch(l -> Files.isRegularFile(Path.of(folder, l.name())))) {
      System.setProperty(PATH, folder);
    }
  }
}
