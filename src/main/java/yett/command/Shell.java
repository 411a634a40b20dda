package yett.command;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandRegistry;
import yett.command.calculate.CalculateVerb;
import yett.command.call.DispatchVerb;
import yett.command.cases.CasesExportVerb;
import yett.command.cases.CasesFiguresVerb;
import yett.command.cases.CasesFindVerb;
import yett.command.cases.CasesForgetVerb;
import yett.command.cases.CasesImportVerb;
import yett.command.cases.CasesPeopleVerb;
import yett.command.cases.CasesRepairVerb;
import yett.command.cases.CasesShowVerb;
import yett.command.cases.CasesUpgradeVerb;
import yett.command.cases.CasesVerb;
import yett.command.cases.CasesVerifyVerb;
import yett.command.cases.RecordVerb;
import yett.command.common.Workplace;
import yett.command.diagnose.DiagnoseVerb;
import yett.command.diagnose.ResumeVerb;
import yett.command.knowledge.KnowledgeAnomaliesVerb;
import yett.command.knowledge.KnowledgeCheckVerb;
import yett.command.knowledge.KnowledgeCompareVerb;
import yett.command.knowledge.KnowledgeCoverVerb;
import yett.command.knowledge.KnowledgeFindVerb;
import yett.command.knowledge.KnowledgeNewVerb;
import yett.command.knowledge.KnowledgeReviewVerb;
import yett.command.knowledge.KnowledgeShowVerb;
import yett.command.knowledge.KnowledgeTestVerb;
import yett.command.knowledge.KnowledgeTrustVerb;
import yett.command.knowledge.KnowledgeVerb;
import yett.command.knowledge.ReplayVerb;
import yett.command.practice.PracticeProgressVerb;
import yett.command.practice.PracticeVerb;

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
    try (Workplace place = new Workplace(environment)) {
      return new Runner(place, commands(place)).run(words);
    }
  }

  private static CommandRegistry commands(Workplace place) {
    return new CommandRegistry(
        // The registry adds to the set it is given.
        new HashSet<Command>(
            List.of(
                DiagnoseVerb.diagnose(place),
                DiagnoseVerb.call(place),
                new DispatchVerb(place),
                new ResumeVerb(place),
                new CasesVerb(place),
                new CasesShowVerb(place),
                new CasesFindVerb(place),
                new CasesFiguresVerb(place),
                new CasesPeopleVerb(place),
                new CasesForgetVerb(place),
                new CasesExportVerb(place),
                new CasesImportVerb(place),
                new CasesVerifyVerb(place),
                new CasesRepairVerb(place),
                new CasesUpgradeVerb(place),
                new RecordVerb(place),
                new ReplayVerb(place),
                new KnowledgeVerb(place),
                new KnowledgeCheckVerb(place),
                new KnowledgeNewVerb(place),
                new KnowledgeFindVerb(place),
                new KnowledgeShowVerb(place),
                new KnowledgeAnomaliesVerb(place),
                new KnowledgeCoverVerb(place),
                new KnowledgeTestVerb(place),
                new KnowledgeCompareVerb(place),
                new KnowledgeTrustVerb(place),
                new PracticeVerb(place),
                new PracticeProgressVerb(place),
                new KnowledgeReviewVerb(place),
                new CalculateVerb(place),
                new HelpVerb(place))));
  }
}
