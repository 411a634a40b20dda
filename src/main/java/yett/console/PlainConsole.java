package yett.console;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;

/**
 * A console over streams, for pipes and for terminals without escape codes; it never writes one. If
 * no person types, each answer is written after its prompt, so that the output reads like the
 * conversation.
 */
public final class PlainConsole implements Console {
  private final Utf8Lines in;
  private final PrintStream out;
  private final PrintStream err;
  private final Layout layout;
  private final boolean interactive;

  /**
   * @param in read one line at a time, never beyond its end
   * @param out has to write UTF-8, otherwise characters that the layout allows are garbled
   * @param layout its colour is ignored
   * @param interactive whether a person types, and the terminal shows what they type
   */
  public PlainConsole(
      InputStream in, PrintStream out, PrintStream err, Layout layout, boolean interactive) {
    this.in = new Utf8Lines(in);
    this.out = out;
    this.err = err;
    this.layout = new Layout(layout.width(), false, layout.unicode());
    this.interactive = interactive;
  }

  @Override
  public int width() {
    return layout.width();
  }

  @Override
  public int lines(List<Block> blocks) {
    return (int) Renderer.render(blocks, layout).lines().count();
  }

  @Override
  public void show(List<Block> blocks) {
    out.print(Renderer.render(blocks, layout));
    out.flush();
  }

  @Override
  public Reply ask(String prompt, List<String> completions) {
    while (true) {
      out.print(Renderer.inline(prompt, layout));
      out.flush();
      Optional<String> raw = read();
      if (raw.isEmpty()) {
        out.println();
        return new Reply.EndOfInput();
      }
      Cleaned line = Cleaned.of(raw.get());
      if (!interactive) {
        out.println(Renderer.inline(line.text(), layout));
      }
      if (line.refusal().isEmpty()) {
        return new Reply.Line(line.text());
      }
      show(Block.paragraph(line.refusal().get()));
    }
  }

  private Optional<String> read() {
    try {
      return in.next();
    } catch (IOException e) {
      throw new UncheckedIOException("Standard input cannot be read: " + e.getMessage(), e);
    }
  }

  @Override
  public boolean interactive() {
    return interactive;
  }

  @Override
  public Progress start(String what, int total) {
    return new TenthsProgress(err, Renderer.inline(what, layout), total);
  }
}
