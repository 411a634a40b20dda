package yett.command.diagnose.sitting;

import java.util.List;
import java.util.stream.Stream;
import yett.command.common.Words;
import yett.knowledge.RuleBase;

/**
 * Words that the Tab key completes at every prompt. After two of them it also completes the cards
 * that they can name.
 */
final class TabWords {
  private final RuleBase base;
  private List<String> words = List.of();

  TabWords(RuleBase base) {
    this.base = base;
  }

  List<String> words() {
    if (words.isEmpty()) {
      words =
          Stream.of(
                  Stream.of(Words.Wish.values()).map(Words.Wish::word),
                  base.ordinaryChecks()
                      .filter(c -> !c.danger())
                      .map(c -> Words.Wish.ASK.word() + " " + c.id()),
                  base.causes().keySet().stream().map(c -> Words.Wish.SUSPECT.word() + " " + c))
              .flatMap(s -> s)
              .toList();
    }
    return words;
  }
}
