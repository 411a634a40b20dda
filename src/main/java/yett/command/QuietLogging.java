package yett.command;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.logging.LogManager;

/**
 * Configures Java's own logging for libraries: only severe errors, on standard error. Java creates
 * an instance when the first library asks for a logger.
 */
public final class QuietLogging {
  private static final String SETTING = "java.util.logging.config.class";
  private static final String WORDS =
      "handlers=java.util.logging.ConsoleHandler\n"
          + ".level=SEVERE\n"
          + "java.util.logging.SimpleFormatter.format=%5$s%n";

  public QuietLogging() throws IOException {
    LogManager.getLogManager()
        .readConfiguration(new ByteArrayInputStream(WORDS.getBytes(StandardCharsets.UTF_8)));
  }

  public static void choose() {
    System.setProperty(SETTING, QuietLogging.class.getName());
  }
}
