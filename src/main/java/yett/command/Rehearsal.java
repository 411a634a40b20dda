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
 * Runs a short interview during the build. Java notes which classes it loads and puts them in an
 * archive, which makes later starts faster. It works in a temporary folder and leaves nothing
 * behind.
 */
public final class Rehearsal {
  /**
   * Answers that lead a case to its first checks, and the usual requests. Their content hardly
   * matters.
   */
  private static final String ANSWERS =
      "0\n\nstays-open\n0\nwhy\nbelief\nhelp\nunknown\n1\nback\ncorrect\n\nsave\n";

  private Rehearsal() {}

  /**
   * @param arguments the folder for the unpacked native library; without it every start would
   *     unpack it again
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
