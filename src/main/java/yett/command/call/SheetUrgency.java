package yett.command.call;

import java.time.ZoneId;
import java.util.function.Function;
import yett.casebook.CaseId;
import yett.desk.Desk;
import yett.desk.OpenCase;
import yett.dispatch.DispatchSheet;
import yett.dispatch.Dispatcher;
import yett.knowledge.Role;

/**
 * How urgent a case is, as its dispatch sheet says it. It takes the rules, so the queue asks only
 * for cases that need them.
 */
record SheetUrgency(Desk desk) implements Function<CaseId, DispatchSheet.Urgency> {
  @Override
  public DispatchSheet.Urgency apply(CaseId id) {
    try (OpenCase open = desk.open(id, Role.CALLER)) {
      return new Dispatcher(desk.expertise(), ZoneId.systemDefault()).urgency(open.moment());
    }
  }
}
