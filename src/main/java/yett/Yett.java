package yett;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;
import org.springframework.shell.core.autoconfigure.SpringShellAutoConfiguration;

/** Starts the program. */
@SpringBootApplication(exclude = SpringShellAutoConfiguration.class)
public class Yett {
  public static void main(String[] args) {
    System.exit(SpringApplication.exit(SpringApplication.run(Yett.class, args)));
  }
}
