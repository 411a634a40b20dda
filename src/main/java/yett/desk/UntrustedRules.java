package yett.desk;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The rules, or a rule base without the program's safeguards, have not been trusted by anybody. The
 * message says how to trust them.
 */
public final class UntrustedRules extends RuntimeException {
  private static final int MOST = 8;

  private UntrustedRules(String message) {
    super(message);
  }

  public static UntrustedRules files(List<String> files) {
    return new UntrustedRules(
        "These rules do not run, because nobody has trusted them on this computer: "
            + String.join(", ", files)
            + ". Rules (DRL) are a program: they can do whatever you can. Once you know who"
            + " wrote them and have read them, type: knowledge trust FOLDER. It holds until one"
            + " of them changes.");
  }

  /**
   * @param lacking cards and rules of the program that protect people and are missing or changed
   */
  public static UntrustedRules safeguards(Collection<String> lacking) {
    return new UntrustedRules(
        "This rule base guides nobody, because it leaves out or changes what protects"
            + " people in the program's own: "
            + few(lacking)
            + ". If that is intended, and you know who did it, type: knowledge trust FOLDER. It"
            + " holds until any of this changes.");
  }

  /** Lists some of many names, in words. */
  public static String few(Collection<String> names) {
    int more = names.size() - MOST;
    return names.stream().limit(MOST).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }
}
