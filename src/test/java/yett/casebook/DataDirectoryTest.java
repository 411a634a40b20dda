package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class DataDirectoryTest {
  private static final Path HOME = Path.of("/home/moor");

  private static DataDirectory of(Map<String, String> environment, String system) {
    return DataDirectory.of(environment, system, HOME);
  }

  private static DataDirectory at(String data, String cache, String settings) {
    return new DataDirectory(Path.of(data), Path.of(cache), Path.of(settings));
  }

  @Test
  void linux_follows_the_xdg_base_directory_specification() {
    assertThat(of(Map.of(), "Linux"))
        .isEqualTo(
            at(
                "/home/moor/.local/share/yett",
                "/home/moor/.cache/yett",
                "/home/moor/.config/yett"));
    assertThat(
            of(
                Map.of("XDG_DATA_HOME", "/d", "XDG_CACHE_HOME", "/c", "XDG_CONFIG_HOME", "/s"),
                "Linux"))
        .isEqualTo(at("/d/yett", "/c/yett", "/s/yett"));
    assertThat(of(Map.of("XDG_DATA_HOME", "relative", "XDG_CACHE_HOME", ""), "FreeBSD"))
        .isEqualTo(
            at(
                "/home/moor/.local/share/yett",
                "/home/moor/.cache/yett",
                "/home/moor/.config/yett"));
  }

  @Test
  void macos_and_windows_have_places_of_their_own() {
    assertThat(of(Map.of(), "Mac OS X"))
        .isEqualTo(
            at(
                "/home/moor/Library/Application Support/yett",
                "/home/moor/Library/Caches/yett",
                "/home/moor/Library/Application Support/yett"));
    assertThat(of(Map.of("LOCALAPPDATA", "/local"), "Windows 11"))
        .isEqualTo(at("/local/yett", "/local/yett/cache", "/local/yett"));
    assertThat(of(Map.of(), "Windows 11").data()).isEqualTo(HOME.resolve("AppData/Local/yett"));
  }

  @Test
  void yett_home_wins_everywhere() {
    for (String system : new String[] {"Linux", "Mac OS X", "Windows 11"}) {
      assertThat(of(Map.of("YETT_HOME", "/y", "XDG_DATA_HOME", "/d"), system))
          .isEqualTo(at("/y", "/y/cache", "/y"));
    }
    assertThat(of(Map.of("YETT_HOME", " "), "Linux")).isEqualTo(of(Map.of(), "Linux"));
    assertThat(of(Map.of("YETT_HOME", "here"), "Linux").data()).isAbsolute();
    assertThat(of(Map.of("YETT_HOME", "/y"), "Linux").casebook())
        .isEqualTo(Path.of("/y/casebook.db"));
  }
}
