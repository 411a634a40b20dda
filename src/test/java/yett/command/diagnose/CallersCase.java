package yett.command.diagnose;

import java.nio.file.Path;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import yett.desk.OpenCase;
import yett.dispatch.DispatchSheet;
import yett.dispatch.Dispatcher;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** Tests at a call of their own. */
public abstract class CallersCase {
  @TempDir protected Path folder;
  protected TypedCase typed;

  @BeforeEach
  void ring() {
    typed = new TypedCase(folder, Shipped.QUICK, Role.CALLER);
  }

  /** What whoever is sent would get now. */
  protected DispatchSheet sheet() {
    try (OpenCase open = typed.open()) {
      return new Dispatcher(Shipped.QUICK, ZoneOffset.UTC).sheet(open.moment(), "1", "Fish dock");
    }
  }

  @AfterEach
  void end() {
    typed.close();
  }
}
