package yett.command.diagnose.screen;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.interview.moment.Moment;
import yett.knowledge.RuleBase;

/** Names the states of the work that hold beside what a screen asks for. */
public record StillInForce(RuleBase base) {
  /**
   * The states that a danger left at the gate. They are named on every screen, because nothing on
   * the screen itself tells of them.
   */
  public Optional<Block> afterDanger(Moment moment) {
    List<String> left =
        base.stops().values().stream().flatMap(s -> s.leaves().stream()).distinct().toList();
    return row(moment.state().work().setUps().stream().filter(left::contains).toList());
  }

  /**
   * @param ended set-ups that the screen itself ends or confirms
   */
  public Optional<Block> beside(Moment moment, Collection<String> ended) {
    return row(moment.state().work().setUps().stream().filter(id -> !ended.contains(id)).toList());
  }

  private Optional<Block> row(List<String> setUps) {
    return setUps.isEmpty()
        ? Optional.empty()
        : Optional.of(Block.rows(Block.row("Still in force", names(base, setUps))));
  }

  /** The names of these set-ups, as they stand inside a sentence. */
  public static String names(RuleBase base, Collection<String> setUps) {
    return setUps.stream()
        .map(id -> base.setUps().get(id).name().toLowerCase(Locale.ROOT))
        .collect(Collectors.joining("; "));
  }
}
