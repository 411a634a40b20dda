package yett.saying;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/**
 * Finds the complaints behind what a caller says: by their names, their words for lay people and
 * their examples. May be used by several threads.
 */
public final class Sayings {
  private final Map<String, Check> complaints = new LinkedHashMap<>();
  private final Phrases phrases;

  public Sayings(RuleBase base) {
    Map<String, List<String>> ways = new LinkedHashMap<>();
    for (Check complaint : base.complaints()) {
      complaints.put(complaint.id(), complaint);
      List<String> all = new ArrayList<>(List.of(complaint.ask(), complaint.lay()));
      all.addAll(base.telephone().sayings().getOrDefault(complaint.id(), List.of()));
      ways.put(complaint.id(), all);
    }
    phrases = new Phrases(ways, base.telephone().synonyms());
  }

  /**
   * A complaint that was probably meant.
   *
   * @param share of all that was found, so that the shares of what is heard add up to at most 1
   */
  public record Heard(Check complaint, double share) {}

  /** The complaints that were probably meant, the most probable first; none if nothing is known. */
  public List<Heard> hear(String words, int most) {
    return phrases.hear(words, most).stream()
        .map(h -> new Heard(complaints.get(h.id()), h.share()))
        .toList();
  }
}
