package yett.command.diagnose;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import yett.knowledge.Role;
import yett.testing.Shipped;

/** Tests at a technician's case of their own. */
public abstract class TechniciansCase {
  @TempDir protected Path folder;
  protected TypedCase typed;

  @BeforeEach
  void begin() {
    typed = new TypedCase(folder, Shipped.QUICK, Role.TECHNICIAN);
  }

  @AfterEach
  void end() {
    typed.close();
  }
}
