package yett.command;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import yett.casebook.Casebook;
import yett.console.Consoles;
import yett.files.NativeLibrary;
import yett.meaning.Meanings;

/**
 * A short interview with nobody, when the program is built: Java notes which classes it loads and
 * keeps them in an archive, from which a start takes them ready-made. It works in a folder of its
 * own and leaves nothing behind.
 */
public final class Rehearsal {
  /** A case as far as the first checks, and what people ask of it; the answers matter little. */
  private static final String ANSWERS =
      "0\n\nstays-open\n0\nwhy\nbelief\nhelp\nunknown\n1\nback\ncorrect\n\nsave\n";

  private Rehearsal() {}

  /**
   * @param arguments a folder for the native library, which every start would unpack otherwise
   */
  public static void main(String[] arguments) throws IOException {
    Path natives = Path.of(arguments[0]);
    Casebook.nativeLibrary().unpack(natives);
    for (NativeLibrary library : Meanings.nativeLibraries()) {
      library.unpack(natives);
    }
    Path home = Files.createTempDirectory("yett-rehearsal");
    Map<String, String> environment = new HashMap<>(System.getenv());
    environment.keySet().removeIf(name -> name.startsWith("YETT_"));
    environment.put("YETT_HOME", home.toString());
    System.setOut(new PrintStream(OutputStream.nullOutputStream()));
    play(environment, ANSWERS, "diagnose", "A gate");
    play(environment, "save\n", "resume");
    play(environment, "", "cases");
    Consoles.rehearse();
    delete(home);
  }

  private static void play(Map<String, String> environment, String typed, String... words) {
    System.setIn(new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)));
    int status = Shell.run(environment, words);
    if (status != 0) {
      throw new IllegalStateException(String.join(" ", words) + " ended with status " + status);
    }
  }

  private static void delete(Path home) throws IOException {
    try (var all = Files.walk(home)) {
      for (Path path : all.sorted((a, b) -> b.compareTo(a)).toList()) {
        Files.delete(path);
      }
    }
  }
}
