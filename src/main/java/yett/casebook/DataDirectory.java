package yett.casebook;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The directories for Yett's files: below {@code YETT_HOME} if that is set, otherwise where the
 * system keeps a program's files (on Linux according to the XDG Base Directory Specification).
 * Nothing is created here.
 *
 * @param data for data that must not be lost
 * @param cache for data that can be made again
 * @param settings for what the user decided
 */
public record DataDirectory(Path data, Path cache, Path settings) {
  private static final String NAME = "yett";

  /** The directories of the user who runs this program, with this environment. */
  public static DataDirectory ofUser(Map<String, String> environment) {
    return of(environment, System.getProperty("os.name"), Path.of(System.getProperty("user.home")));
  }

  static DataDirectory of(Map<String, String> environment, String system, Path home) {
    var variables = new Variables(environment);
    Optional<Path> own = variables.path("YETT_HOME").map(Path::toAbsolutePath);
    if (own.isPresent()) {
      return new DataDirectory(own.get(), own.get().resolve("cache"), own.get());
    }
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      Path local = variables.path("LOCALAPPDATA").orElse(home.resolve("AppData").resolve("Local"));
      Path here = local.resolve(NAME);
      return new DataDirectory(here, here.resolve("cache"), here);
    }
    if (name.startsWith("mac")) {
      Path library = home.resolve("Library");
      Path support = library.resolve("Application Support").resolve(NAME);
      return new DataDirectory(support, library.resolve("Caches").resolve(NAME), support);
    }
    return new DataDirectory(
        variables.xdg("XDG_DATA_HOME").orElse(home.resolve(".local/share")).resolve(NAME),
        variables.xdg("XDG_CACHE_HOME").orElse(home.resolve(".cache")).resolve(NAME),
        variables.xdg("XDG_CONFIG_HOME").orElse(home.resolve(".config")).resolve(NAME));
  }

  /** The file of the casebook. */
  public Path casebook() {
    return data.resolve("casebook.db");
  }

  private record Variables(Map<String, String> environment) {
    Optional<Path> path(String name) {
      return Optional.ofNullable(environment.get(name)).filter(s -> !s.isBlank()).map(Path::of);
    }

    /**
     * A directory from the environment. The specification says that a path that is not absolute is
     * ignored.
     */
    Optional<Path> xdg(String name) {
      return path(name).filter(Path::isAbsolute);
    }
  }
}
