package yett.shell;

import java.time.Clock;
import java.util.Map;
import org.springframework.stereotype.Component;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.casebook.DataDirectory;
import yett.console.Console;
import yett.console.Consoles;
import yett.interview.Expertise;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/** What commands work with; each thing is opened when it is first needed. */
@Component
final class Desk implements AutoCloseable {
  private final Map<String, String> environment = System.getenv();
  private final DataDirectory directory = DataDirectory.ofUser();
  private final Clock clock = Clock.systemUTC();
  private Console console;
  private Casebook casebook;
  private Expertise expertise;

  synchronized Console console() {
    if (console == null) {
      console = Consoles.choose(environment);
    }
    return console;
  }

  synchronized Casebook casebook() {
    if (casebook == null) {
      casebook = Casebook.open(directory.casebook());
    }
    return casebook;
  }

  synchronized Expertise expertise() {
    if (expertise == null) {
      expertise =
          Expertise.of(RuleBase.read(new ShippedKnowledge()), directory.cache().resolve("rules"));
    }
    return expertise;
  }

  Clock clock() {
    return clock;
  }

  OpenCase open(CaseId id, Role role) {
    return new OpenCase(casebook(), id, expertise().newInterview(), role, clock);
  }

  @Override
  public synchronized void close() {
    if (casebook != null) {
      casebook.close();
    }
  }
}
