package yett.knowledge;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import yett.knowledge.CardFile.Document;

/**
 * Changes chances in the text of cards and leaves every other character as it is: comments, order
 * and line ends stay, so that version control shows only the change. A word for a chance is
 * replaced by a figure.
 */
public final class CardEdit {
  private static final double SAME = 1e-9;

  private final SortedMap<String, String> files;
  private final Predicate<String> mine;

  /**
   * @param files contents by path; not changed
   * @param mine which of these paths may be written to
   */
  public CardEdit(SortedMap<String, String> files, Predicate<String> mine) {
    this.files = new TreeMap<>(files);
    this.mine = mine;
  }

  /** The files with all changes so far. */
  public SortedMap<String, String> files() {
    return new TreeMap<>(files);
  }

  /** The file and position of a card. */
  private record Place(String file, Document card, String pointer) {}

  /**
   * Writes the prior of a cause.
   *
   * @return the file of the card; empty if it cannot be found
   */
  public Optional<String> prior(String cause, double chance) {
    return find("cause", cause, "/prior").map(p -> scalar(p, chance));
  }

  /** Writes the row of a check or complaint for when no cause that has a row there is present. */
  public Optional<String> otherwise(String check, List<String> outcomes, double[] row) {
    return find("check", check, "/otherwise")
        .or(() -> find("complaint", check, "/otherwise"))
        .map(p -> write(p, outcomes, row));
  }

  /**
   * Writes the row of a cause on a check, wherever it is now: on the check's own card or on the
   * cause's.
   */
  public Optional<String> row(String check, String cause, List<String> outcomes, double[] row) {
    return find("check", check, "/likelihood/" + cause)
        .or(() -> find("complaint", check, "/likelihood/" + cause))
        .or(() -> find("cause", cause, "/shows/" + check))
        .map(p -> write(p, outcomes, row));
  }

  /** Writes the chance with which a cause leads to an effect that its card already names. */
  public Optional<String> leadsTo(String cause, String effect, double chance) {
    return find("cause", cause, "/leads-to/" + effect).map(p -> scalar(p, chance));
  }

  private Optional<Place> find(String kind, String id, String pointer) {
    Pattern first =
        Pattern.compile("(?m)^\"?" + kind + "\"?\\s*:\\s*[\"']?" + Pattern.quote(id) + "\\b");
    for (Map.Entry<String, String> file : files.entrySet()) {
      String name = file.getKey();
      boolean cards = RuleBaseReader.holdsCards(name) && mine.test(name);
      if (cards && first.matcher(file.getValue()).find()) {
        for (Document card : CardFile.read(file.getKey(), file.getValue(), new ArrayList<>())) {
          JsonNode named = card.root().get(kind);
          boolean here = named != null && named.asString().strip().equals(id);
          if (here && !card.root().at(pointer).isMissingNode()) {
            return Optional.of(new Place(file.getKey(), card, pointer));
          }
        }
      }
    }
    return Optional.empty();
  }

  private String write(Place place, List<String> outcomes, double[] row) {
    if (!place.card().root().at(place.pointer()).isObject()) {
      return scalar(place, row[row.length - 1]);
    }
    Map<String, Double> chances = new LinkedHashMap<>();
    for (int i = 0; i < row.length; i++) {
      chances.put(outcomes.get(i), row[i]);
    }
    return map(place, chances);
  }

  private String scalar(Place place, double chance) {
    CardText text = new CardText(files.get(place.file()));
    int key = text.offset(place.card().line(place.pointer()), place.card().column(place.pointer()));
    text.replaceValue(key, figure(chance));
    files.put(place.file(), text.toString());
    return place.file();
  }

  /**
   * Replaces entries from the last to the first, so that the offsets of earlier ones stay valid.
   */
  private String map(Place place, Map<String, Double> chances) {
    CardText text = new CardText(files.get(place.file()));
    Map<Integer, String> present = new TreeMap<>(Comparator.reverseOrder());
    List<String> missing = new ArrayList<>();
    for (Map.Entry<String, Double> chance : chances.entrySet()) {
      String pointer = place.pointer() + "/" + chance.getKey();
      if (!place.card().root().at(pointer).isMissingNode()) {
        int key = text.offset(place.card().line(pointer), place.card().column(pointer));
        boolean same = says(place.card().root().at(pointer), chance.getValue());
        present.put(key, same ? "" : figure(chance.getValue()));
      } else if (chance.getValue() > 0) {
        missing.add(chance.getKey() + ": " + figure(chance.getValue()));
      }
    }
    boolean last = true;
    for (Map.Entry<Integer, String> entry : present.entrySet()) {
      if (!entry.getValue().isEmpty()) {
        text.replaceValue(entry.getKey(), entry.getValue());
      }
      if (last) {
        text.addBehind(entry.getKey(), missing);
      }
      last = false;
    }
    files.put(place.file(), text.toString());
    return place.file();
  }

  /** Whether the field already has this chance, in figures or as a word. */
  private static boolean says(JsonNode there, double chance) {
    OptionalDouble said =
        there.isNumber()
            ? OptionalDouble.of(there.doubleValue())
            : LikelihoodWords.chance(there.asString());
    return said.isPresent() && Math.abs(said.getAsDouble() - chance) < SAME;
  }

  /** The chance in its shortest form: 0.46, 1, 0.0125. */
  private static String figure(double chance) {
    return new BigDecimal(Double.toString(chance)).stripTrailingZeros().toPlainString();
  }
}
