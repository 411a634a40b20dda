package yett.command.common;

/** Commands that tell other programs what is wrong with a command line, if it says --json. */
public interface JsonErrors {
  void tell(UsageException wrong);
}
