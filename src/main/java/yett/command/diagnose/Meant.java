package yett.command.diagnose;

import java.util.List;
import java.util.function.Function;
import yett.command.common.ListChoice;
import yett.command.common.Prompt;
import yett.console.Block;

/** Which of the things that words were understood as are meant: one, several or none. */
record Meant(Sitting sitting) {

  <T> List<T> of(List<T> things, Function<T, String> words) {
    if (things.size() == 1) {
      return sitting.confirm(things, words).stream().toList();
    }
    List<String> texts = things.stream().map(words).toList();
    sitting.show(Block.heading("Which do you mean?"), Block.numbered(texts));
    return sitting.until(
        "Numbers, or Enter for none",
        line -> {
          ListChoice.Several picked =
              ListChoice.several(line.equals("0") ? "" : line, texts, texts);
          return picked.unclear().isEmpty()
              ? Prompt.Reading.of(picked.positions().stream().map(things::get).toList())
              : Prompt.Reading.again(
                  "Type numbers from 1 to " + things.size() + ", or only Enter.");
        });
  }
}
