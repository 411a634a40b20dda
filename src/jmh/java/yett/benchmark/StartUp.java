package yett.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Time from the start of the process to its first prompt, seen from outside; beside it the smallest
 * Spring Shell program.
 *
 * <pre>{@code
 * mvn -q -DskipTests package
 * mvn -q -f src/jmh/empty-shell/pom.xml package
 * java src/jmh/java/yett/benchmark/StartUp.java 10 target/yett.jar target/empty-shell/empty-shell.jar
 * }</pre>
 *
 * <p>What follows the archives is given to every Java that is started; {@code @} in it becomes the
 * name of the program, so that each can have a class data archive of its own.
 */
public final class StartUp {
  private static final String QUESTION = "the numbers that are so> ";
  private static final String SHELL = "shell:>";

  private StartUp() {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    int runs = Integer.parseInt(arguments[0]);
    String yett = arguments[1];
    String empty = arguments[2];
    List<String> flags = List.of(arguments).subList(3, arguments.length);
    Path home = Files.createTempDirectory("yett-start-up");
    try {
      Map<String, List<Double>> seconds = new LinkedHashMap<>();
      // In turns, so that a busy minute of the machine falls on all of them.
      for (int run = 0; run <= runs; run++) {
        delete(home.resolve("cache"));
        List<Double> times =
            List.of(
                time(command("yett", flags, yett, "diagnose", "Slipway gate"), home, QUESTION),
                time(command("yett", flags, yett, "diagnose", "Slipway gate"), home, QUESTION),
                time(command("empty", flags, empty), home, SHELL));
        if (run > 0) { // the first round reads the disk
          add(seconds, "yett, first start", times.get(0));
          add(seconds, "yett, later starts", times.get(1));
          add(seconds, "empty Spring Shell", times.get(2));
        }
      }
      System.out.printf("%-28s %8s %8s %8s   (s, %d runs)%n", "", "median", "min", "max", runs);
      seconds.forEach(StartUp::print);
    } finally {
      delete(home);
    }
  }

  private static List<String> command(
      String name, List<String> flags, String jar, String... words) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    flags.forEach(flag -> command.add(flag.replace("@", name)));
    command.addAll(List.of("-jar", jar));
    command.addAll(List.of(words));
    return command;
  }

  private static double time(List<String> command, Path home, String prompt)
      throws IOException, InterruptedException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("YETT_HOME", home.toString());
    builder.environment().put("LANG", "C.UTF-8");
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    long begin = System.nanoTime();
    Process process = builder.start();
    process.getOutputStream().close();
    StringBuilder output = new StringBuilder();
    double seconds = Double.NaN;
    try (InputStream in = process.getInputStream()) {
      byte[] bytes = new byte[4096];
      for (int n = in.read(bytes); n >= 0; n = in.read(bytes)) {
        output.append(new String(bytes, 0, n, StandardCharsets.ISO_8859_1));
        if (Double.isNaN(seconds) && output.indexOf(prompt) >= 0) {
          seconds = (System.nanoTime() - begin) / 1e9;
        }
      }
    }
    if (process.waitFor() != 0 || Double.isNaN(seconds)) {
      throw new IllegalStateException(command + " showed no prompt:\n" + output);
    }
    return seconds;
  }

  private static void add(Map<String, List<Double>> seconds, String name, double time) {
    seconds.computeIfAbsent(name, n -> new ArrayList<>()).add(time);
  }

  private static void print(String name, List<Double> seconds) {
    List<Double> sorted = seconds.stream().sorted().toList();
    int middle = sorted.size() / 2;
    double median =
        sorted.size() % 2 == 1
            ? sorted.get(middle)
            : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
    System.out.printf(
        "%-28s %8.2f %8.2f %8.2f%n", name, median, sorted.get(0), sorted.get(sorted.size() - 1));
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path directory, IOException e) {
            try {
              Files.delete(directory);
            } catch (IOException notEmpty) {
              throw new UncheckedIOException(notEmpty);
            }
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
