package yett.e2e;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/** Runs a command without a terminal: its input comes from a string, its output is collected. */
final class Pipe {

  /** The result of a finished command. */
  record Result(int exitCode, String stdout, String stderr) {}

  private Pipe() {}

  /**
   * Runs a command to its end.
   *
   * @param environment added to {@link Programs#environment()}
   * @throws AssertionError if it does not end in time; it is then killed
   */
  static Result run(
      List<String> command, Map<String, String> environment, String stdin, Duration patience) {
    return run(command, environment, stdin.getBytes(StandardCharsets.UTF_8), patience);
  }

  /** The same for input that is not UTF-8. */
  static Result run(
      List<String> command, Map<String, String> environment, byte[] stdin, Duration patience) {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().clear();
    builder.environment().putAll(Programs.environment());
    builder.environment().putAll(environment);
    try {
      Process process = builder.start();
      CompletableFuture<String> stdout = collect(process.getInputStream());
      CompletableFuture<String> stderr = collect(process.getErrorStream());
      feed(process, stdin);
      if (!process.waitFor(patience.toMillis(), TimeUnit.MILLISECONDS)) {
        process.destroyForcibly();
        throw new AssertionError(
            "Still running after %s. Standard output:%n%s%nStandard error:%n%s"
                .formatted(patience, stdout.join(), stderr.join()));
      }
      return new Result(process.exitValue(), stdout.join(), stderr.join());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError("Interrupted", e);
    }
  }

  private static void feed(Process process, byte[] stdin) {
    try (OutputStream in = process.getOutputStream()) {
      in.write(stdin);
    } catch (IOException e) {
      // The program may end without reading all of its input.
    }
  }

  private static CompletableFuture<String> collect(InputStream stream) {
    return CompletableFuture.supplyAsync(
        () -> {
          try (stream) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
          } catch (IOException e) {
            throw new UncheckedIOException(e);
          }
        },
        // One thread for each stream; in a shared pool of one thread the first stream would block
        // the second.
        task -> new Thread(task, "pipe output").start());
  }
}
