package yett.command.diagnose;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** Tests at a call of their own. */
abstract class CallersCase {
  @TempDir Path folder;
  TypedCase typed;

  @BeforeEach
  void ring() {
    typed = new TypedCase(folder, Shipped.QUICK, Role.CALLER);
  }

  @AfterEach
  void end() {
    typed.close();
  }
}
