package yett.console;

import java.util.function.UnaryOperator;

/** Changes every sentence of blocks by a function. */
public final class Rewording {
  private final UnaryOperator<String> said;

  public Rewording(UnaryOperator<String> said) {
    this.said = said;
  }

  public Block of(Block block) {
    if (block instanceof Block.Heading heading) {
      return new Block.Heading(of(heading.text()));
    }
    if (block instanceof Block.Paragraph paragraph) {
      return new Block.Paragraph(of(paragraph.text()));
    }
    if (block instanceof Block.Numbered list) {
      return new Block.Numbered(
          list.items().stream()
              .map(i -> new Block.Item(i.label(), of(i.text()), i.hint().map(this::of)))
              .toList());
    }
    if (block instanceof Block.Rows rows) {
      return new Block.Rows(
          rows.rows().stream().map(r -> new Block.Row(r.name(), of(r.value()))).toList());
    }
    return block instanceof Block.Signal signal
        ? new Block.Signal(signal.word(), of(signal.text()))
        : block;
  }

  private Text of(Text text) {
    return new Text(
        text.spans().stream()
            .map(s -> new Text.Span(said.apply(s.words()), s.emphasis()))
            .toList());
  }
}
