package yett.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import yett.knowledge.KnowledgeSource;

/** Tests the folder that the build makes: it starts from anywhere, and contains what it should. */
class LauncherIT {
  private static final Path PROGRAM = Programs.folder();
  private static final Path OWN_JAVA = PROGRAM.resolve("runtime");
  private static final String NO_CASE = "The casebook has no cases yet.";

  @TempDir private Path home;

  private Pipe.Result cases(Path launcher) {
    return Pipe.run(
        List.of(launcher.toString(), "cases"),
        Map.of("YETT_HOME", home.resolve("data").toString()),
        "",
        Visitor.PATIENCE);
  }

  /** Parts that bring no licence text have the licence named in the list. */
  @Test
  void the_texts_of_the_licences_lie_beside_the_parts() throws IOException {
    Path licences = PROGRAM.resolve("licences");
    String without = Files.readString(licences.resolve("README.txt"));
    assertThat(licences.resolve("THIRD-PARTY.txt")).content().contains("postgresql", "sqlite-jdbc");
    try (Stream<Path> parts = Files.list(PROGRAM.resolve("lib"))) {
      List<String> names =
          parts.map(p -> p.getFileName().toString().replaceFirst("\\.jar$", "")).toList();
      assertThat(names)
          .allSatisfy(
              name -> {
                if (!without.contains("\n" + name + "\n")) {
                  assertThat(licences.resolve(name)).isNotEmptyDirectory();
                }
              });
      assertThat(names.stream().filter(n -> Files.exists(licences.resolve(n))).count())
          .isGreaterThan(names.size() / 2);
    }
  }

  /** A copy of the folder in another place; tests may damage its class archive. */
  private Path moved(String name) throws IOException {
    Path folder = Files.createDirectories(home.resolve(name));
    Files.createDirectory(folder.resolve("bin"));
    Path launcher = folder.resolve("bin").resolve("yett");
    Files.copy(PROGRAM.resolve("bin").resolve("yett"), launcher);
    assertThat(launcher.toFile().setExecutable(true)).isTrue();
    try (Stream<Path> all = Files.list(PROGRAM)) {
      for (Path part : all.filter(p -> !p.endsWith("bin") && !p.equals(archive())).toList()) {
        Files.createSymbolicLink(folder.resolve(part.getFileName()), part);
      }
    }
    Files.copy(archive(), folder.resolve(archive().getFileName()));
    return launcher;
  }

  private static Path archive() {
    return Stream.of("yett.jsa", "yett.aot")
        .map(PROGRAM::resolve)
        .filter(Files::exists)
        .findFirst()
        .orElseThrow();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void it_starts_from_a_folder_with_blanks_and_by_links_to_it() throws IOException {
    Path launcher = moved("Harrow Quay's gates $HOME");
    Path near = Files.createSymbolicLink(home.resolve("near"), home.relativize(launcher));
    Path far = Files.createSymbolicLink(home.resolve("a link"), near);

    for (Path path : List.of(launcher, near, far)) {
      Pipe.Result result = cases(path);
      assertThat(result.exitCode()).as(result.stderr()).isZero();
      assertThat(result.stdout()).contains(NO_CASE);
      assertThat(result.stderr()).isEmpty();
    }
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void an_archive_that_does_not_fit_is_done_without_and_nothing_is_said() throws IOException {
    Path launcher = moved("spoilt");
    Path copy = launcher.getParent().getParent().resolve(archive().getFileName());

    assertThat(copy.toFile().setWritable(true)).isTrue();
    Files.writeString(copy, "not an archive");
    assertThat(cases(launcher)).isEqualTo(new Pipe.Result(0, shown(), ""));
    Files.delete(copy);
    assertThat(cases(launcher)).isEqualTo(new Pipe.Result(0, shown(), ""));
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void a_program_copied_anew_is_not_taken_for_the_one_of_the_archive() throws IOException {
    Path launcher = moved("copied");
    Path program = launcher.getParent().getParent().resolve("yett.jar");
    Files.delete(program);
    Files.copy(PROGRAM.resolve("yett.jar"), program);
    Files.setLastModifiedTime(program, FileTime.from(Instant.EPOCH));

    assertThat(cases(launcher)).isEqualTo(new Pipe.Result(0, shown(), ""));
  }

  private String shown() {
    return "  " + NO_CASE + " Start one with: diagnose.\n";
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void a_java_of_its_own_comes_first_and_without_any_it_says_what_to_do() throws IOException {
    Path broken = Files.createDirectories(home.resolve("bin")).resolve("java");
    Files.writeString(broken, "#!/bin/sh\nexit 3\n");
    assertThat(broken.toFile().setExecutable(true)).isTrue();
    Path tools = Files.createDirectory(home.resolve("tools"));
    for (String tool : List.of("sh", "dirname", "readlink")) {
      Files.createSymbolicLink(tools.resolve(tool), Path.of("/bin", tool).toRealPath());
    }
    Map<String, String> elsewhere =
        Map.of("JAVA_HOME", home.toString(), "YETT_HOME", home.resolve("data").toString());
    Map<String, String> nowhere = new HashMap<>(elsewhere);
    nowhere.putAll(Map.of("JAVA_HOME", "", "PATH", tools.toString()));
    List<String> command = Programs.packaged("cases");

    int found = Pipe.run(command, elsewhere, "", Visitor.PATIENCE).exitCode();
    Pipe.Result none = Pipe.run(command, nowhere, "", Visitor.PATIENCE);

    boolean own = Files.exists(OWN_JAVA);
    assertThat(found).isEqualTo(own ? 0 : 3);
    assertThat(none.exitCode()).isEqualTo(own ? 0 : 69);
    assertThat(none.stderr())
        .isEqualTo(
            own
                ? ""
                : "Yett needs Java 17 or newer. Install it, or set JAVA_HOME to where it is.\n");
  }

  @Test
  void the_archive_of_classes_is_used() {
    List<String> command = new ArrayList<>();
    Path home = OWN_JAVA.toFile().exists() ? OWN_JAVA : Path.of(System.getProperty("java.home"));
    command.add(home.resolve("bin").resolve("java").toString());
    command.add(
        archive().endsWith("yett.aot")
            ? "-XX:AOTCache=" + archive()
            : "-XX:SharedArchiveFile=" + archive());
    command.addAll(List.of("-XX:+UseSerialGC", "-Xlog:class+load"));
    command.addAll(List.of("-jar", PROGRAM.resolve("yett.jar").toString(), "cases"));
    Pipe.Result result =
        Pipe.run(command, Map.of("YETT_HOME", this.home.toString()), "", Visitor.PATIENCE);

    List<String> own =
        result.stdout().lines().filter(line -> line.matches(".* yett\\.\\S+ source: .*")).toList();
    assertThat(own).hasSizeGreaterThan(100);
    assertThat(own.stream().filter(line -> line.contains("shared objects file")).count())
        .as("classes of the program from the archive, of %d", own.size())
        .isGreaterThan(own.size() * 9L / 10);
  }

  @Test
  void the_programs_own_rules_are_not_copied() {
    Pipe.Result result =
        Pipe.run(
            Programs.packaged("diagnose", "A"),
            Map.of("YETT_HOME", home.toString()),
            "",
            Visitor.PATIENCE);

    assertThat(result.exitCode()).as(result.stderr()).isZero();
    assertThat(home.resolve("casebook.db")).exists();
    assertThat(home.resolve("cache")).doesNotExist();
  }

  @Test
  void nothing_is_unpacked_at_a_start() throws IOException {
    Path temporary = Files.createFile(home.resolve("no folder")); // nothing can be put there
    Pipe.Result result =
        Pipe.run(
            Programs.packaged("cases"),
            Map.of(
                "YETT_HOME",
                home.toString(),
                "JDK_JAVA_OPTIONS",
                "\"-Djava.io.tmpdir=" + temporary + "\""),
            "",
            Visitor.PATIENCE);

    assertThat(result.exitCode()).as(result.stderr()).isZero();
    assertThat(result.stdout()).contains(NO_CASE);
  }

  @Test
  void something_stands_on_a_terminal_at_once_and_is_wiped_away() {
    try (Pty pty = Pty.start(Programs.packaged(), Map.of("YETT_HOME", home.toString()), 80, 24)) {
      pty.expect("yett> ", Visitor.PATIENCE).enter("quit");
      assertThat(pty.waitForExit(Visitor.PATIENCE)).isZero();
      String wiped = "\r" + " ".repeat("Starting Yett ...".length()) + "\r";
      assertThat(pty.raw()).startsWith("Starting Yett ...\r" + wiped);
    }
  }

  @Test
  void what_was_deleted_from_the_sources_is_not_in_the_archive() throws IOException {
    try (JarFile jar = new JarFile(PROGRAM.resolve("yett.jar").toFile())) {
      Set<String> packed = jar.stream().map(e -> e.getName()).collect(Collectors.toSet());
      Set<String> sources = KnowledgeSource.folder(Path.of("knowledge")).files().keySet();
      assertThat(json(jar, "knowledge-texts.json").propertyNames())
          .containsExactlyInAnyOrderElementsOf(sources);
      JsonNode prepared = json(jar, "prepared-knowledge.json");
      assertThat(prepared.has("fingerprint")).as("the build found nothing wrong").isTrue();
      assertThat(
              Stream.of("cards", "rules", "tables")
                  .flatMap(part -> prepared.get(part).propertyNames().stream()))
          .containsExactlyInAnyOrderElementsOf(
              sources.stream()
                  .filter(name -> !name.endsWith(".case.yaml") && !name.endsWith(".texts.yaml"))
                  .toList());
      assertThat(packed).noneMatch(name -> name.startsWith("knowledge/"));
      assertThat(below(packed, "shared/")).isEqualTo(files("shared"));
      assertThat(below(packed, "db/")).isEqualTo(files("src/main/resources/db"));
      assertThat(packed.stream().filter(name -> name.endsWith("/models.txt"))).hasSize(1);
    }
  }

  private static JsonNode json(JarFile jar, String name) throws IOException {
    return JsonMapper.shared().readTree(jar.getInputStream(jar.getEntry(name)));
  }

  private static Set<String> below(Set<String> packed, String folder) {
    return packed.stream()
        .filter(name -> name.startsWith(folder) && !name.endsWith("/"))
        .map(name -> name.substring(folder.length()))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> files(String folder) throws IOException {
    Path root = Path.of(folder);
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(Files::isRegularFile)
          .map(path -> root.relativize(path).toString().replace('\\', '/'))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }
}
