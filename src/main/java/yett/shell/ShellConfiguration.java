package yett.shell;

import java.util.HashSet;
import java.util.List;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.shell.core.command.Command;
import org.springframework.shell.core.command.CommandRegistry;

/** The commands of the program. */
@Configuration(proxyBeanMethods = false)
class ShellConfiguration {

  @Bean
  CommandRegistry commandRegistry(Desk desk) {
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
