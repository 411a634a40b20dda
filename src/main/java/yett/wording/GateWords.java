package yett.wording;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.interview.site.SiteFacts;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/** Describes a gate in one line, by what tells it from the others of an estate. */
public final class GateWords {
  private static final String MAINS = "mains";
  private static final String SUPPLY = "supply";
  private static final String VOLTS = "supply-volts";

  /** Site questions whose answers tell one gate of an estate from another. */
  private static final List<String> TELLING =
      List.of("opening", "support", "leaf-mass", "supply", "supply-volts");

  private final RuleBase base;

  public GateWords(RuleBase base) {
    this.base = base;
  }

  /**
   * @param told answers to site questions; for the others the usual answer is taken
   */
  public String line(Map<String, String> told) {
    return words(new SiteFacts(base).answers(told));
  }

  /** The same line with only the answers that were given; empty if there are none. */
  public String toldLine(Map<String, String> told) {
    return words(told);
  }

  /** The usual answers that are assumed for the rest; empty if all were given. */
  public String usualLine(Map<String, String> told) {
    Map<String, String> rest = new HashMap<>(new SiteFacts(base).answers(told));
    rest.keySet().removeAll(told.keySet());
    if (told.containsKey(VOLTS)) { // whoever gives the voltage of the mains knows that it has one
      rest.remove(SUPPLY);
    }
    return words(rest);
  }

  private String words(Map<String, String> site) {
    List<String> words = new ArrayList<>();
    given(site, "opening").ifPresent(w -> words.add(w + " opening"));
    given(site, "support").ifPresent(w -> words.add(w.equals("track") ? "on a track" : w));
    given(site, "leaf-mass").ifPresent(words::add);
    given(site, SUPPLY)
        .or(() -> given(site, VOLTS).map(v -> MAINS))
        .ifPresent(
            w ->
                words.add(
                    w.equals(MAINS)
                        ? w + given(site, VOLTS).map(v -> " " + v + " V").orElse("")
                        : w));
    return String.join(", ", words);
  }

  /** Whether the answer to this question tells one gate of an estate from another. */
  public static boolean tells(SiteQuestion question) {
    return TELLING.contains(question.id());
  }

  /** The answer in words: the word of a choice, or a reading as it was typed. */
  private Optional<String> given(Map<String, String> site, String question) {
    SiteQuestion card = base.siteQuestions().get(question);
    return Optional.ofNullable(site.get(question))
        .map(w -> card.measures().isPresent() ? Wording.site(card, w) : Wording.spaced(w));
  }
}
