package emptyshell;

import java.util.Map;
import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Shows the prompt of Spring Shell and ends at the end of input. */
@SpringBootApplication
public class EmptyShell {
  public static void main(String[] args) {
    SpringApplication application = new SpringApplication(EmptyShell.class);
    // What makes a program start sooner, as in the program that it is compared with.
    application.setDefaultProperties(
        Map.of(
            "spring.main.banner-mode", "off",
            "spring.main.web-application-type", "none",
            "spring.main.lazy-initialization", "true",
            "spring.main.log-startup-info", "false",
            "spring.jmx.enabled", "false",
            "logging.level.root", "error",
            "spring.shell.history.enabled", "false"));
    application.run(args);
  }
}
