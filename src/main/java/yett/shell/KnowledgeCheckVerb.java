package yett.shell;

import java.nio.file.Path;
import java.util.List;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.console.Block;
import yett.knowledge.KnowledgeException;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;

/** {@code knowledge check}: reads a rule base and tells everything that is wrong with it. */
final class KnowledgeCheckVerb extends Verb {
  private final Desk desk;

  KnowledgeCheckVerb(Desk desk) {
    super(
        "knowledge check",
        "find what is wrong with the cards of a rule base",
        "Usage: knowledge check [FOLDER]. Without a folder, the rule base that the program came "
            + "with. Cards are read, rules (DRL) are not run.");
    this.desk = desk;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    List<String> words = words(context);
    KnowledgeSource source =
        words.isEmpty()
            ? new ShippedKnowledge()
            : KnowledgeSource.folder(Path.of(String.join(" ", words)));
    try {
      RuleBase base = RuleBase.read(source);
      desk.console()
          .show(
              Block.paragraph(
                  "No problem found: "
                      + base.causes().size()
                      + " causes, "
                      + base.ordinaryChecks().count()
                      + " checks, "
                      + base.repairs().size()
                      + " repairs."));
      return OK;
    } catch (KnowledgeException e) {
      e.problems().forEach(p -> System.out.println(p));
      System.out.println(e.problems().size() + " problems.");
      return DATA;
    }
  }
}
