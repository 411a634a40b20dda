package yett.knowledge;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.node.MissingNode;

/**
 * A firm's own decisions and letterhead. They are not a card, so that no folder of cards can bring
 * them along: somebody entered them on this computer.
 *
 * @param mainsParts the least qualified person who works on a mains part that is locked off and
 *     proved dead; for parts that are missing, each card decides
 * @param inspectEvery months between two inspections of a gate
 */
public record FirmSettings(
    Map<MainsPart, Role> mainsParts, Letterhead letterhead, int inspectEvery) {
  private static final int YEAR = 12;

  /** No settings: everything as on the cards. */
  public static final FirmSettings NONE = new FirmSettings(Map.of(), Letterhead.NONE, YEAR);

  private static final String MAINS_PARTS = "mains-parts";

  /**
   * The roles that a firm may name: nobody below a technician, because nobody else enters the
   * set-up for such work.
   */
  private static final List<String> MAY_BE_NAMED =
      List.of(Role.TECHNICIAN.word(), Role.ELECTRICIAN.word());

  /**
   * Reads the settings.
   *
   * @param file its name, for messages
   * @throws KnowledgeException with every error
   */
  public static FirmSettings read(String file, String text) {
    return read(file, text, true);
  }

  /**
   * The same for work at a gate, which an error in the letterhead does not stop: it shows when
   * something is printed.
   */
  public static FirmSettings forWork(String file, String text) {
    return read(file, text, false);
  }

  private static FirmSettings read(String file, String text, boolean prints) {
    List<Problem> problems = new ArrayList<>();
    List<CardFile.Document> documents = CardFile.read(file, text, problems);
    Map<MainsPart, Role> parts = new EnumMap<>(MainsPart.class);
    Letterhead letterhead = Letterhead.NONE;
    int inspectEvery = YEAR;
    for (CardFile.Document document : documents) {
      Fields fields = new Fields(document, "", document.root(), problems);
      Fields inner = inner(fields, MAINS_PARTS, document, problems);
      for (String word : inner.names()) {
        if (MainsPart.words().contains(word)) {
          String who = inner.oneOf(word, Role.ELECTRICIAN.word(), MAY_BE_NAMED);
          parts.put(MainsPart.named(word), Role.named(who));
        } else {
          inner.problem(
              word,
              "unknown-word",
              "\"" + word + "\" is not a mains part",
              Names.advice(word, MainsPart.words()));
        }
      }
      int others = problems.size();
      Fields firm = inner(fields, "firm", document, problems);
      letterhead = Letterhead.read(fields, firm);
      firm.finish();
      if (!prints) {
        problems.subList(others, problems.size()).clear();
      }
      inspectEvery = (int) fields.number("inspect-every", YEAR, 1, 120);
      fields.finish();
    }
    if (!problems.isEmpty()) {
      throw new KnowledgeException(problems, "the settings of the firm");
    }
    return new FirmSettings(Map.copyOf(parts), letterhead, inspectEvery);
  }

  private static Fields inner(
      Fields fields, String name, CardFile.Document document, List<Problem> problems) {
    return fields.has(name)
        ? fields.inner(name)
        : new Fields(document, "", MissingNode.getInstance(), problems);
  }

  /** The rule base with each card on a mains part assigned to the role that the firm names. */
  public RuleBase in(RuleBase base) {
    Map<String, Check> checks = new LinkedHashMap<>(base.checks());
    Map<String, Repair> repairs = new LinkedHashMap<>(base.repairs());
    StringBuilder otherwise = new StringBuilder();
    base.mainsParts()
        .forEach(
            (card, part) -> {
              Role who = mainsParts.get(part);
              if (who != null) {
                checks.computeIfPresent(card, (id, check) -> check.withWho(who));
                repairs.computeIfPresent(card, (id, repair) -> repair.withWho(who));
              }
            });
    if (checks.equals(base.checks()) && repairs.equals(base.repairs())) {
      return base;
    }
    // Part of the fingerprint, so that a case shows when the rules are not those that it was begun
    // with.
    mainsParts.entrySet().stream()
        .sorted(Map.Entry.comparingByKey())
        .forEach(
            e ->
                otherwise
                    .append('+')
                    .append(e.getKey().word())
                    .append('=')
                    .append(e.getValue().word()));
    return base.withCards(base.causes(), checks, base.histories(), repairs)
        .named(base.fingerprint() + otherwise);
  }
}
