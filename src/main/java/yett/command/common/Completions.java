package yett.command.common;

/** Names of the completion providers, for use in the annotation of a command. */
public final class Completions {
  public static final String COMMANDS = "commands";
  public static final String CASES = "cases";
  public static final String CARDS = "cards";
  public static final String GATES = "gates";
  public static final String FILES = "files";
  public static final String CALCULATIONS = "calculations";

  private Completions() {}
}
