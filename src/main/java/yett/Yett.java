package yett;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.shell.core.autoconfigure.SpringShellAutoConfiguration;
import yett.console.Output;
import yett.shell.Mistakes;

/** Starts the program. */
@SpringBootApplication(exclude = SpringShellAutoConfiguration.class)
public class Yett {
  private static final int SOFTWARE = 70;

  /** Settings come from the program's archive, never from the folder in which somebody stands. */
  private static final String SETTINGS = "spring.config.location";

  public static void main(String[] args) {
    Output.keepForOwnWords(line -> Mistakes.ofUser().printed(line));
    Thread.setDefaultUncaughtExceptionHandler((thread, mistake) -> tell(mistake));
    System.setProperty(SETTINGS, "optional:classpath:/application.properties");
    System.exit(run(args));
  }

  private static int run(String[] args) {
    try {
      return SpringApplication.exit(SpringApplication.run(Yett.class, args));
    } catch (Exception | LinkageError | VirtualMachineError mistake) {
      tell(mistake);
      return SOFTWARE;
    }
  }

  private static void tell(Throwable mistake) {
    Output.standard().tell(Mistakes.ofUser().told(mistake));
  }
}
