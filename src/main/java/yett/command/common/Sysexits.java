package yett.command.common;

import org.springframework.shell.core.command.ExitStatus;

/** Exit statuses as numbered by the BSD list sysexits, so that scripts can tell them apart. */
public final class Sysexits {
  public static final ExitStatus OK = ExitStatus.OK;

  /** Not an error: the things that were compared differ. */
  public static final ExitStatus DIFFERENT = new ExitStatus(1, "different");

  public static final ExitStatus USAGE = new ExitStatus(64, "usage");
  public static final ExitStatus DATA = new ExitStatus(65, "data");
  public static final ExitStatus NO_INPUT = new ExitStatus(66, "no input");
  public static final ExitStatus SOFTWARE = new ExitStatus(70, "software");
  public static final ExitStatus IO = new ExitStatus(74, "input or output");
  public static final ExitStatus NO_PERMISSION = new ExitStatus(77, "no permission");

  private Sysexits() {}
}
