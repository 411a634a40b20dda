package yett.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import yett.knowledge.RuleBase;

/** Lists the cards that only one of two rule bases has. */
final class CardsApart {
  private CardsApart() {}

  /** One sentence for each kind of card that differs, without a full stop. */
  static List<String> words(RuleBase before, RuleBase now) {
    Map<String, Set<String>> later = kinds(now);
    List<String> words = new ArrayList<>();
    kinds(before)
        .forEach(
            (kind, ids) -> {
              words.addAll(only(kind + " only in the first", ids, later.get(kind)));
              words.addAll(only(kind + " only in the second", later.get(kind), ids));
            });
    ChangedCards changed = new ChangedCards(before, now);
    words.addAll(listed("switched off only in the first", changed.switchedOn()));
    words.addAll(listed("switched off only in the second", changed.switchedOff()));
    return List.copyOf(words);
  }

  private static Map<String, Set<String>> kinds(RuleBase base) {
    Map<String, Set<String>> kinds = new LinkedHashMap<>();
    kinds.put("causes", base.causes().keySet());
    kinds.put("effects", base.effects().keySet());
    kinds.put("checks", base.checks().keySet());
    kinds.put("repairs", base.repairs().keySet());
    kinds.put("histories", base.histories().keySet());
    kinds.put("site questions", base.siteQuestions().keySet());
    kinds.put("set-ups", base.setUps().keySet());
    kinds.put("stops", base.stops().keySet());
    kinds.put("rule files", RuleFiles.rules(base).keySet());
    kinds.put("tables", RuleFiles.tables(base).keySet());
    return kinds;
  }

  private static List<String> only(String what, Set<String> here, Set<String> there) {
    return listed(what, here.stream().filter(id -> !there.contains(id)).toList());
  }

  private static List<String> listed(String what, List<String> ids) {
    return ids.isEmpty() ? List.of() : List.of(what + ": " + String.join(", ", ids));
  }
}
