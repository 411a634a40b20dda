package yett.e2e;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Commands and environments for the programs under test. */
final class Programs {
  private Programs() {}

  /** The command for a main class of this build, on the Java that runs the tests. */
  static List<String> java(Class<?> main, String... arguments) {
    String classpath =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    List<String> command = new ArrayList<>();
    command.add(java());
    command.add("-XX:TieredStopAtLevel=1");
    command.add("-XX:+UseSerialGC");
    if (Runtime.version().feature() >= 22) {
      // The packaged program has Enable-Native-Access in the manifest of its jar for this.
      command.add("--enable-native-access=ALL-UNNAMED");
    }
    command.addAll(List.of("-cp", classpath, main.getName()));
    command.addAll(List.of(arguments));
    return command;
  }

  /**
   * The command for the packaged program as a person starts it, on the Java that runs the tests.
   */
  static List<String> packaged(String... arguments) {
    boolean windows = System.getProperty("os.name").startsWith("Windows");
    List<String> command = new ArrayList<>();
    command.add(folder().resolve("bin").resolve(windows ? "yett.bat" : "yett").toString());
    command.addAll(List.of(arguments));
    return command;
  }

  /** The folder of the program that the build made. */
  static Path folder() {
    return Path.of(System.getProperty("yett.program", "target/yett")).toAbsolutePath();
  }

  private static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }

  /** A small, fixed environment, so that tests do not depend on the machine on which they run. */
  static Map<String, String> environment() {
    Map<String, String> environment = new HashMap<>();
    for (String name : List.of("PATH", "HOME", "TMPDIR", "SystemRoot")) {
      String value = System.getenv(name);
      if (value != null) {
        environment.put(name, value);
      }
    }
    environment.put("JAVA_HOME", System.getProperty("java.home"));
    environment.put("LANG", "C.UTF-8");
    environment.put("TERM", "xterm-256color");
    return environment;
  }
}
