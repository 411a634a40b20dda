package yett;

import yett.shell.Shell;

/** Starts the program. */
public final class Yett {
  private Yett() {}

  public static void main(String[] words) {
    System.exit(Shell.run(System.getenv(), words));
  }
}
