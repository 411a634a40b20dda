package yett.command.knowledge;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;
import yett.desk.RuleBases;
import yett.knowledge.RuleBase;
import yett.rules.TrustedRules;

/** {@code knowledge trust}: says that the rules of a folder, as they are now, may run. */
public final class KnowledgeTrustVerb extends Verb {
  private final Workplace place;

  public KnowledgeTrustVerb(Workplace place) {
    super(
        "knowledge trust",
        "say that the rules (DRL) of a folder may run",
        "Usage: knowledge trust FOLDER. Cards and tables are data; rules are a program and can do "
            + "whatever you can. Say it of rules whose author you know and that you have looked at. "
            + "A folder in place of the rule base of the program that protects people otherwise "
            + "needs it too before anybody is led by it. It holds on this computer until one of them "
            + "changes.");
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    if (words(context).size() != 1) {
      throw new UsageException(getHelp());
    }
    RuleBase base = RuleBase.read(place.desk().choice().source(Path.of(words(context).get(0))));
    TrustedRules trusted = place.desk().ruleBases().trusted();
    SortedMap<String, String> all = RuleBases.otherSafeguards(base);
    all.putAll(base.rules());
    List<String> untrusted = trusted.untrusted(all);
    trusted.trust(all);
    place
        .console()
        .show(
            Block.paragraph(
                untrusted.isEmpty()
                    ? "All rules of this folder are trusted already."
                    : "Trusted from now on: " + String.join(", ", untrusted) + "."));
    return OK;
  }
}
