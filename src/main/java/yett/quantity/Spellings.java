package yett.quantity;

import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the unit for a spelling. Case is ignored, except in a first letter m or M that means a
 * thousandth or a million.
 */
final class Spellings {
  private static final Map<String, Unit> EXACT = new HashMap<>();
  private static final Map<String, Unit> FOLDED = new HashMap<>();

  static {
    for (Unit unit : Unit.values()) {
      for (String spelling : unit.spellings()) {
        add(unit, spelling);
        if (spelling.length() >= 3 && spelling.chars().allMatch(Character::isLetter)) {
          add(unit, spelling + "s");
        }
      }
    }
  }

  private Spellings() {}

  private static void add(Unit unit, String spelling) {
    EXACT.put(spelling, unit);
    FOLDED.put(fold(spelling), unit);
  }

  static Optional<Unit> find(String spelling) {
    String tidy = spelling.strip();
    if (tidy.length() > 1 && tidy.endsWith(".")) {
      tidy = tidy.substring(0, tidy.length() - 1);
    }
    Unit exact = EXACT.get(tidy);
    if (exact != null) {
      return Optional.of(exact);
    }
    // MOHM in capitals may mean either; only a spelling with a small letter decides.
    boolean shouted = mayBeMilliOrMega(tidy) && tidy.equals(tidy.toUpperCase(Locale.ROOT));
    return shouted ? Optional.empty() : Optional.ofNullable(FOLDED.get(fold(tidy)));
  }

  static List<String> all(Collection<Unit> units) {
    return units.stream().flatMap(unit -> unit.spellings().stream()).toList();
  }

  private static String fold(String spelling) {
    String lower = spelling.toLowerCase(Locale.ROOT);
    return mayBeMilliOrMega(spelling) ? spelling.charAt(0) + lower.substring(1) : lower;
  }

  private static boolean mayBeMilliOrMega(String spelling) {
    return Arrays.asList("mv", "ma", "mohm", "mohms", "mω", "mah", "ma h", "ma·h")
        .contains(spelling.toLowerCase(Locale.ROOT));
  }
}
