package yett;

import org.springframework.boot.SpringApplication;
import org.springframework.boot.autoconfigure.SpringBootApplication;

/** Starts the program. */
@SpringBootApplication
public class Yett {
  public static void main(String[] args) {
    SpringApplication.run(Yett.class, args);
  }
}
