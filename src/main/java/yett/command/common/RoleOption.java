package yett.command.common;

import java.util.Locale;
import yett.knowledge.Names;
import yett.knowledge.Role;

/** Reads the option that says which role answers. */
public final class RoleOption {
  private RoleOption() {}

  /**
   * The role with this name.
   *
   * @throws UsageException if there is none
   */
  public static Role of(String word) {
    if (!Role.words().contains(word.toLowerCase(Locale.ROOT))) {
      throw new UsageException(
          Words.quoted(word) + " is not a known role. " + Names.advice(word, Role.words()));
    }
    return Role.named(word);
  }
}
