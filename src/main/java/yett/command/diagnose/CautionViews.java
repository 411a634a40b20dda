package yett.command.diagnose;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.console.Block;
import yett.console.SignalWord;
import yett.knowledge.Caution;
import yett.knowledge.RuleBase;

/** Shows cautions: in full the first time in a sitting, afterwards as a reminder. */
public final class CautionViews {
  private final RuleBase base;

  /** Cautions that were shown in full. */
  private final Set<String> cautioned = new HashSet<>();

  public CautionViews(RuleBase base) {
    this.base = base;
  }

  /** The cautions for a person who reads them on the screen. */
  public List<Block> written(List<Caution> cautions) {
    List<Block> blocks = new ArrayList<>();
    for (Caution caution : cautions) {
      boolean first = cautioned.add(caution.id());
      blocks.add(
          Block.signal(
              SignalWord.valueOf(caution.word().name()), first ? caution.text() : caution.avoid()));
    }
    return blocks;
  }

  /** The cautions to read out on the telephone, in everyday words, each once. */
  public List<Block> spoken(List<Caution> cautions) {
    Map<String, String> lay = base.telephone().cautions();
    List<Block> blocks = new ArrayList<>();
    for (Caution caution : cautions) {
      if (cautioned.add(caution.id())) {
        String text = lay.getOrDefault(caution.id(), "");
        blocks.add(
            Block.signal(
                SignalWord.valueOf(caution.word().name()),
                "Read out: " + (text.isEmpty() ? caution.text() : text)));
      }
    }
    return blocks;
  }
}
