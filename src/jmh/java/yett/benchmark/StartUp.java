package yett.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What a start costs, seen from outside: the time to the first prompt, and the processor time until
 * the process has ended, its input being closed. Beside it the smallest Spring Shell program.
 *
 * <pre>{@code
 * mvn -q -DskipTests package
 * mvn -q -f src/jmh/empty-shell/pom.xml package
 * java src/jmh/java/yett/benchmark/StartUp.java 10
 * }</pre>
 *
 * <p>Needs a shell after POSIX, which knows the processor time of what it started.
 */
public final class StartUp {
  private static final String QUESTION = "the numbers that are so> ";
  private static final String SHELL = "shell:>";
  private static final Pattern CPU = Pattern.compile("(\\d+)m([\\d.]+)s (\\d+)m([\\d.]+)s\\s*$");
  private static final Path JAVA_HOME = Path.of(System.getProperty("java.home"));
  private static final Path EMPTY = Path.of("target/empty-shell/unpacked");

  private StartUp() {}

  private record Program(String name, String prompt, List<String> command, List<Cost> costs) {
    Program(String name, String prompt, String... command) {
      this(name, prompt, List.of(command), new ArrayList<>());
    }
  }

  /** In seconds. */
  private record Cost(double toPrompt, double cpu) {}

  public static void main(String[] arguments) throws IOException, InterruptedException {
    int runs = Integer.parseInt(arguments[0]);
    String java = JAVA_HOME.resolve("bin/java").toString();
    String gate = "Slipway gate";
    List<Program> programs =
        List.of(
            new Program("target/yett", QUESTION, "target/yett/bin/yett", "diagnose", gate),
            new Program("empty shell, same way", SHELL, empty(java)),
            new Program("yett.jar", QUESTION, java, "-jar", "target/yett.jar", "diagnose", gate),
            new Program(
                "empty-shell.jar", SHELL, java, "-jar", "target/empty-shell/empty-shell.jar"));
    Path home = Files.createTempDirectory("yett-start-up");
    try {
      // In turns, so that a busy minute of the machine falls on all of them; the first round reads
      // the disk.
      for (int run = 0; run <= runs; run++) {
        for (Program program : programs) {
          Cost cost = time(program, home);
          if (run > 0) {
            program.costs.add(cost);
          }
        }
      }
    } finally {
      delete(home);
    }
    System.out.printf("%-24s %28s %28s%n", "seconds, " + runs + " runs", "to the first prompt", "CPU");
    for (Program program : programs) {
      System.out.printf(
          "%-24s %28s %28s%n",
          program.name,
          spread(program.costs.stream().map(Cost::toPrompt)),
          spread(program.costs.stream().map(Cost::cpu)));
    }
    ratio("folder, run by run", programs.get(0), programs.get(1));
    ratio("archive, run by run", programs.get(2), programs.get(3));
  }

  private static void ratio(String name, Program one, Program other) {
    List<Double> wall = new ArrayList<>();
    List<Double> cpu = new ArrayList<>();
    for (int i = 0; i < one.costs.size(); i++) {
      wall.add(one.costs.get(i).toPrompt / other.costs.get(i).toPrompt);
      cpu.add(one.costs.get(i).cpu / other.costs.get(i).cpu);
    }
    System.out.printf("%-24s %28s %28s%n", name, spread(wall.stream()), spread(cpu.stream()));
  }

  private static String[] empty(String java) {
    boolean aot = Files.exists(EMPTY.resolve("empty-shell.aot"));
    return new String[] {
      java,
      "-XX:TieredStopAtLevel=1",
      "-XX:+UseSerialGC",
      "-Xlog:disable",
      aot
          ? "-XX:AOTCache=" + EMPTY.resolve("empty-shell.aot").toAbsolutePath()
          : "-XX:SharedArchiveFile=" + EMPTY.resolve("empty-shell.jsa").toAbsolutePath(),
      "-jar",
      EMPTY.resolve("empty-shell.jar").toAbsolutePath().toString()
    };
  }

  private static Cost time(Program program, Path home) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("sh", "-c", "\"$@\"; times", "sh"));
    command.addAll(program.command);
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("YETT_HOME", home.toString());
    builder.environment().put("JAVA_HOME", JAVA_HOME.toString());
    builder.environment().put("LANG", "C.UTF-8");
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    long begin = System.nanoTime();
    Process process = builder.start();
    process.getOutputStream().close();
    StringBuilder output = new StringBuilder();
    double toPrompt = Double.NaN;
    try (InputStream in = process.getInputStream()) {
      byte[] bytes = new byte[4096];
      for (int n = in.read(bytes); n >= 0; n = in.read(bytes)) {
        output.append(new String(bytes, 0, n, StandardCharsets.ISO_8859_1));
        if (Double.isNaN(toPrompt) && output.indexOf(program.prompt) >= 0) {
          toPrompt = (System.nanoTime() - begin) / 1e9;
        }
      }
    }
    Matcher cpu = CPU.matcher(output);
    if (process.waitFor() != 0 || Double.isNaN(toPrompt) || !cpu.find()) {
      throw new IllegalStateException(program.command + " showed no prompt:\n" + output);
    }
    double[] parts =
        Arrays.stream(new int[] {1, 2, 3, 4}).mapToDouble(i -> Double.parseDouble(cpu.group(i))).toArray();
    return new Cost(toPrompt, 60 * (parts[0] + parts[2]) + parts[1] + parts[3]);
  }

  /** Median (least to most). */
  private static String spread(Stream<Double> values) {
    List<Double> sorted = new ArrayList<>(values.toList());
    Collections.sort(sorted);
    int middle = sorted.size() / 2;
    double median =
        sorted.size() % 2 == 1
            ? sorted.get(middle)
            : (sorted.get(middle - 1) + sorted.get(middle)) / 2;
    return "%.2f (%.2f-%.2f)".formatted(median, sorted.get(0), sorted.get(sorted.size() - 1));
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      all.sorted(Comparator.reverseOrder())
          .forEach(
              path -> {
                try {
                  Files.delete(path);
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              });
    }
  }
}
