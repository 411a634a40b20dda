package yett.command.diagnose.danger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.told.GraverForm;
import yett.console.Block;
import yett.saying.DangerSayings.Danger;
import yett.saying.Thing;
import yett.wording.Wording;

/**
 * The dangers that words at the list of dangers may mean. Each stays suspected until it is ruled
 * out by its name: other words, and a 0 for the whole list, do not end it.
 */
final class Suspected {
  /** Answers to a question that was not asked. They say nothing and are not kept. */
  private static final Set<String> YES_OR_NO = Set.of("no", "yes", "nope", "yeah", "ok", "okay");

  private final Sitting sitting;
  private final List<Danger> list;
  private final Set<Danger> suspected = new LinkedHashSet<>();
  private final List<String> words = new ArrayList<>();

  /**
   * @param list all dangers in the order in which they are numbered
   */
  Suspected(Sitting sitting, List<Danger> list) {
    this.sitting = sitting;
    this.list = list;
  }

  boolean isEmpty() {
    return suspected.isEmpty();
  }

  /** What was typed in words since the last call of this method. */
  List<String> words() {
    List<String> typed = List.copyOf(words);
    words.clear();
    return typed;
  }

  /** Suspects what the line may mean; beside other suspects only what it means clearly. */
  void hear(String line) {
    if (!YES_OR_NO.contains(line.strip().toLowerCase(Locale.ROOT))) {
      words.add(line.strip());
    }
    suspect(suspected.isEmpty() ? sitting.ears().dangers().hear(line, list) : clearly(line), line);
  }

  private List<Danger> clearly(String line) {
    Set<Thing> told = sitting.ears().tellings().dangers(List.of(line));
    return list.stream().filter(d -> told.contains(d.thing())).toList();
  }

  /** Suspects dangers that these words were found to mean. */
  void suspect(Collection<Danger> heard, String words) {
    suspected.addAll(heard);
    suspected.addAll(GraverForm.beside(suspected, list, words));
  }

  /** Asks whether they are so; if there is none, says what an answer would be. */
  void ask() {
    if (suspected.isEmpty()) {
      sitting.say(
          "That does not say which of these applies, or that none does; your words are"
              + " kept. Type the numbers that apply; 0 only if none does; unknown 2 if you cannot"
              + " tell about number 2.");
      return;
    }
    List<Danger> meant = ordered(suspected);
    boolean one = meant.size() == 1;
    sitting.show(
        Block.paragraph("That may mean danger:"),
        numbered(meant),
        Block.paragraph(
            (one ? "Is this true? yes" : "Are these true? yes, for " + numbers(graver()))
                + ", or the numbers of all that apply; 0 only if nothing on the whole list does."));
  }

  /** All of them; of two forms of one danger, the graver. */
  Set<Danger> graver() {
    return GraverForm.of(ordered(suspected));
  }

  /**
   * Rules out the only one, because it was denied.
   *
   * @return false if there are several, and it is not clear which of them were denied
   */
  boolean ruleOutTheOnly() {
    if (byDanger().size() != 1) {
      return false;
    }
    suspected.clear();
    return true;
  }

  /**
   * Asks about each by its name, apart from those that nobody can tell. The word "no" has to be
   * typed, so that a single wrong key does not dismiss what somebody said.
   *
   * @return those that are so; empty if one of them was neither denied nor confirmed
   */
  Optional<Set<Danger>> byName(Set<Danger> untold) {
    Set<Danger> so = new LinkedHashSet<>();
    for (List<Danger> forms : byDanger()) {
      if (untold.containsAll(forms)) {
        continue;
      }
      Optional<Danger> answer = byName(forms, so);
      if (answer.isEmpty()) {
        return Optional.empty();
      }
    }
    return Optional.of(so);
  }

  private Optional<Danger> byName(List<Danger> forms, Set<Danger> so) {
    sitting.show(Block.paragraph("What was said may mean:"), numbered(forms));
    String line =
        sitting
            .line(
                "Type no if it is not true, "
                    + numbers(forms)
                    + " if it is; anything else asks again")
            .strip();
    Optional<Danger> named =
        forms.stream()
            .filter(d -> line.equals(number(d)) || line.equalsIgnoreCase("yes"))
            .findFirst();
    if (named.isPresent()) {
      so.add(named.get());
      return named;
    }
    if (line.equalsIgnoreCase("no")) {
      forms.forEach(suspected::remove);
      return Optional.of(forms.get(0));
    }
    if (line.contains(" ")) {
      hear(line);
    }
    return Optional.empty();
  }

  /** The forms of each danger together, in the order of the list. */
  private List<List<Danger>> byDanger() {
    Map<String, List<Danger>> forms = new LinkedHashMap<>();
    ordered(suspected)
        .forEach(d -> forms.computeIfAbsent(d.check().id(), c -> new ArrayList<>()).add(d));
    return List.copyOf(forms.values());
  }

  private List<Danger> ordered(Collection<Danger> dangers) {
    return list.stream().filter(dangers::contains).toList();
  }

  private Block numbered(List<Danger> dangers) {
    return new Block.Numbered(
        dangers.stream()
            .map(d -> Block.item(number(d), Wording.capital(d.outcome().text())))
            .toList());
  }

  private String number(Danger danger) {
    return Integer.toString(list.indexOf(danger) + 1);
  }

  private String numbers(Collection<Danger> dangers) {
    return dangers.stream().map(this::number).collect(Collectors.joining(" and "));
  }
}
