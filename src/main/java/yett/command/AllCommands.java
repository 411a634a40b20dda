package yett.command;

import java.util.function.Supplier;
import org.springframework.shell.core.command.CommandRegistry;
import org.springframework.shell.core.command.completion.CompletionProvider;
import yett.command.calculate.CalculateCommands;
import yett.command.call.CallCommands;
import yett.command.call.Calling;
import yett.command.call.QueueCommands;
import yett.command.cases.CasebookCommands;
import yett.command.cases.CasesCommands;
import yett.command.cases.FiguresCommands;
import yett.command.cases.ForgetCommands;
import yett.command.cases.PeopleCommands;
import yett.command.cases.RecordCommands;
import yett.command.cases.TransferCommands;
import yett.command.cases.VerifyCommands;
import yett.command.diagnose.DiagnoseCommands;
import yett.command.diagnose.InspectCommands;
import yett.command.gates.DemoCommands;
import yett.command.gates.DueCommands;
import yett.command.gates.GateEntryCommands;
import yett.command.gates.GateLifeCommands;
import yett.command.gates.GateTransferCommands;
import yett.command.gates.GatesCommands;
import yett.command.gates.UnitsCommands;
import yett.command.gates.UsualGateCommands;
import yett.command.knowledge.AnomaliesCommands;
import yett.command.knowledge.BundleCommands;
import yett.command.knowledge.CardCommands;
import yett.command.knowledge.CheckCommands;
import yett.command.knowledge.CompareCommands;
import yett.command.knowledge.CoverCommands;
import yett.command.knowledge.HearsCommands;
import yett.command.knowledge.KnowledgeCommands;
import yett.command.knowledge.NewCommands;
import yett.command.knowledge.ReplayCommands;
import yett.command.knowledge.ReviewCommands;
import yett.command.knowledge.TableCommands;
import yett.command.knowledge.TestCommands;
import yett.command.knowledge.TextsCommands;
import yett.command.knowledge.TrustCommands;
import yett.command.practice.CourseCommands;
import yett.command.practice.PracticeCommands;
import yett.console.Console;
import yett.console.StandardStreams;
import yett.desk.Desk;

/** Lists the classes with commands. Each is instantiated only when one of its commands runs. */
final class AllCommands {
  private final Workplace place;
  private final Failures failures;
  private final CommandRegistry registry = new CommandRegistry();
  private WordCompletions completions;

  AllCommands(Workplace place, Failures failures) {
    this.place = place;
    this.failures = failures;
    add(DiagnoseCommands.class, () -> new DiagnoseCommands(desk(), console(), Calling::new));
    add(InspectCommands.class, () -> new InspectCommands(desk(), console(), Calling::new));
    add(CallCommands.class, () -> new CallCommands(desk(), console(), output()));
    add(QueueCommands.class, () -> new QueueCommands(desk(), console()));
    add(CasesCommands.class, () -> new CasesCommands(desk(), console()));
    add(RecordCommands.class, () -> new RecordCommands(desk(), output()));
    add(GatesCommands.class, () -> new GatesCommands(desk(), console(), output()));
    add(DueCommands.class, () -> new DueCommands(desk(), console()));
    add(UnitsCommands.class, () -> new UnitsCommands(desk(), console()));
    add(DemoCommands.class, () -> new DemoCommands(desk(), console()));
    add(UsualGateCommands.class, () -> new UsualGateCommands(desk(), console()));
    add(GateEntryCommands.class, () -> new GateEntryCommands(desk(), console()));
    add(GateLifeCommands.class, () -> new GateLifeCommands(desk(), console()));
    add(GateTransferCommands.class, () -> new GateTransferCommands(desk(), console(), output()));
    add(FiguresCommands.class, () -> new FiguresCommands(desk(), console()));
    add(PeopleCommands.class, () -> new PeopleCommands(desk(), console(), output()));
    add(ForgetCommands.class, () -> new ForgetCommands(desk(), console()));
    add(TransferCommands.class, () -> new TransferCommands(desk(), console()));
    add(VerifyCommands.class, () -> new VerifyCommands(desk(), console()));
    add(CasebookCommands.class, () -> new CasebookCommands(desk(), console()));
    add(KnowledgeCommands.class, () -> new KnowledgeCommands(desk(), console(), output()));
    add(CardCommands.class, () -> new CardCommands(desk(), console(), output()));
    add(CheckCommands.class, () -> new CheckCommands(desk(), console(), output()));
    add(HearsCommands.class, () -> new HearsCommands(desk(), console(), output()));
    add(NewCommands.class, () -> new NewCommands(desk(), console(), output()));
    add(AnomaliesCommands.class, () -> new AnomaliesCommands(desk(), console()));
    add(CoverCommands.class, () -> new CoverCommands(desk(), console(), output()));
    add(TestCommands.class, () -> new TestCommands(desk(), console(), output()));
    add(CompareCommands.class, () -> new CompareCommands(desk(), console(), output()));
    add(TrustCommands.class, () -> new TrustCommands(desk(), console(), output()));
    add(BundleCommands.class, () -> new BundleCommands(desk(), console(), output()));
    add(TextsCommands.class, () -> new TextsCommands(desk(), console(), output()));
    add(TableCommands.class, () -> new TableCommands(desk(), console(), output()));
    add(ReplayCommands.class, () -> new ReplayCommands(desk(), console(), output()));
    add(ReviewCommands.class, () -> new ReviewCommands(desk(), console()));
    add(PracticeCommands.class, () -> new PracticeCommands(desk(), console(), output()));
    add(CourseCommands.class, () -> new CourseCommands(desk(), console(), output()));
    add(CalculateCommands.class, () -> new CalculateCommands(console(), output()));
    add(HelpCommands.class, () -> new HelpCommands(console()));
  }

  CommandRegistry registry() {
    return registry;
  }

  private <T> void add(Class<T> type, Supplier<T> made) {
    AnnotatedCommand.of(type, made, failures, this::completions).forEach(registry::registerCommand);
  }

  private CompletionProvider completions(String name) {
    if (completions == null) {
      completions = new WordCompletions(place.desk(), registry);
    }
    return completions.named(name);
  }

  private Desk desk() {
    return place.desk();
  }

  private Console console() {
    return place.console();
  }

  private StandardStreams output() {
    return place.output();
  }
}
