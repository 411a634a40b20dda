package yett.shell;

import java.util.List;

/** Rules that nobody said may run; the message says how to say it. */
final class UntrustedRules extends RuntimeException {
  UntrustedRules(List<String> files) {
    super(
        "These rules do not run, because nobody said on this computer that they are trusted: "
            + String.join(", ", files)
            + ". Rules (DRL) are a program: they can do whatever you can. Once you know who wrote "
            + "them and have looked at them, say so with: knowledge trust FOLDER. It holds until "
            + "one of them changes.");
  }
}
