package yett.shell;

import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.classic.spi.ThrowableProxy;
import ch.qos.logback.core.AppenderBase;
import java.io.IOException;

/** Puts what libraries say of their troubles where the program's own mistakes are noted. */
public final class LibraryTroubles extends AppenderBase<ILoggingEvent> {
  @Override
  protected void append(ILoggingEvent event) {
    Throwable thrown =
        event.getThrowableProxy() instanceof ThrowableProxy proxy ? proxy.getThrowable() : null;
    try {
      Mistakes.ofUser().note(event.getLoggerName() + ": " + event.getFormattedMessage(), thrown);
    } catch (IOException | RuntimeException e) {
      // What it means for the person is told by whoever used the library.
    }
  }
}
