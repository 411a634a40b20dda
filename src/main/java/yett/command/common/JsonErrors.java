package yett.command.common;

/** A class of commands that report a wrong command line as JSON if it has --json. */
public interface JsonErrors {
  void tell(UsageException wrong);
}
