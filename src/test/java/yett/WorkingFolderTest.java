package yett;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** People stand in folders of anybody when they start the program. */
class WorkingFolderTest {
  @TempDir private Path folder;
  @TempDir private Path home;

  @Test
  void settings_that_lie_in_the_folder_are_not_read() throws IOException, InterruptedException {
    Path written = home.resolve("written");
    Files.writeString(folder.resolve("application.properties"), "logging.config=./log.xml\n");
    Files.createDirectories(folder.resolve("config"));
    Files.writeString(folder.resolve("config/application.yaml"), "logging: {config: ./log.xml}\n");
    Files.writeString(
        folder.resolve("log.xml"),
        """
        <configuration>
          <appender name="f" class="ch.qos.logback.core.FileAppender">
            <file>%s</file>
            <encoder><pattern>anything%%n</pattern></encoder>
          </appender>
          <root level="trace"><appender-ref ref="f"/></root>
        </configuration>
        """
            .formatted(written));
    ProcessBuilder builder =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "yett.Yett",
                "help")
            .directory(folder.toFile())
            .redirectErrorStream(true);
    builder.environment().put("YETT_HOME", home.toString());
    Process program = builder.start();
    String said = new String(program.getInputStream().readAllBytes());
    assertThat(program.waitFor()).as(said).isZero();
    assertThat(said).contains("diagnose");
    assertThat(written).doesNotExist();
  }
}
