package yett.shell;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandRegistry;

/**
 * The parts of the program, put together by hand: there are three, and no container is as quick.
 */
public final class Shell {
  private Shell() {}

  /**
   * Runs the command that the words make, or asks for commands if there are none.
   *
   * @param environment settings: {@code YETT_HOME} and others, {@code TERM}, {@code COLUMNS}
   * @return the exit status, after the BSD list sysexits
   */
  public static int run(Map<String, String> environment, String... words) {
    QuietLogging.choose();
    try (Desk desk = new Desk(environment)) {
      return new Runner(desk, commands(desk)).run(words);
    }
  }

  private static CommandRegistry commands(Desk desk) {
    return new CommandRegistry(
        // The registry adds to the set it is given.
        new HashSet<Command>(
            List.of(
                DiagnoseVerb.diagnose(desk),
                DiagnoseVerb.call(desk),
                new DispatchVerb(desk),
                new ResumeVerb(desk),
                new CasesVerb(desk),
                new CasesShowVerb(desk),
                new CasesFindVerb(desk),
                new CasesFiguresVerb(desk),
                new CasesPeopleVerb(desk),
                new CasesForgetVerb(desk),
                new CasesExportVerb(desk),
                new CasesImportVerb(desk),
                new CasesVerifyVerb(desk),
                new CasesRepairVerb(desk),
                new CasesUpgradeVerb(desk),
                new RecordVerb(desk),
                new ReplayVerb(desk),
                new KnowledgeVerb(desk),
                new KnowledgeCheckVerb(desk),
                new KnowledgeNewVerb(desk),
                new KnowledgeFindVerb(desk),
                new KnowledgeShowVerb(desk),
                new KnowledgeAnomaliesVerb(desk),
                new KnowledgeCoverVerb(desk),
                new KnowledgeTestVerb(desk),
                new KnowledgeCompareVerb(desk),
                new KnowledgeTrustVerb(desk),
                new PracticeVerb(desk),
                new PracticeProgressVerb(desk),
                new KnowledgeReviewVerb(desk),
                new CalculateVerb(desk),
                new HelpVerb(desk))));
  }
}
