package yett.console;

import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/** A stream that passes on what is printed to it, line by line. */
final class LinesTo extends OutputStream {
  private static final int LONGEST = 64 << 10;

  private final Consumer<String> taker;
  private final ByteArrayOutputStream line = new ByteArrayOutputStream();

  LinesTo(Consumer<String> taker) {
    this.taker = taker;
  }

  @Override
  public synchronized void write(int b) {
    if (b == '\n' || line.size() >= LONGEST) {
      hand();
    }
    if (b != '\n' && b != '\r') {
      line.write(b);
    }
  }

  private void hand() {
    taker.accept(line.toString(StandardCharsets.UTF_8));
    line.reset();
  }

  @Override
  public synchronized void close() {
    if (line.size() > 0) {
      hand();
    }
  }
}
