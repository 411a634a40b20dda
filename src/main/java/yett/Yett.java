package yett;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.shell.core.autoconfigure.SpringShellAutoConfiguration;

/** Starts the program. */
@SpringBootApplication(exclude = SpringShellAutoConfiguration.class)
public class Yett {
  /** Settings come from the program's archive, never from the folder in which somebody stands. */
  private static final String SETTINGS = "spring.config.location";

  public static void main(String[] args) {
    System.setProperty(SETTINGS, "optional:classpath:/application.properties");
    System.exit(SpringApplication.exit(SpringApplication.run(Yett.class, args)));
  }
}
