package yett.command.practice;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.CRC32;
import yett.knowledge.Card;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.saying.Phrases;

/**
 * The cards that a trainee can ask for, each with a label: a number for a check, r and a number for
 * a repair, s for a set-up, p for a proof. The number of a check or repair is computed from its id,
 * so that labels stay the same when a card is added.
 */
public final class LabelledCards {
  private static final int MOST_FOUND = 5;

  /** The lowest number. With four digits two cards hardly ever get the same. */
  private static final int FIRST = 1000;

  private static final int NUMBERS = 9000;

  /** Further matches with less than this share of the best one's score are not shown. */
  private static final double WORTH_SHOWING = 0.3;

  private static final Pattern LOOKING =
      Pattern.compile("(?i)^(look|see|check|measure|test|read|feel|listen|watch|inspect|find)\\b");

  private final Map<String, Thing> things = new LinkedHashMap<>();
  private final Phrases phrases;

  public LabelledCards(RuleBase base) {
    for (String area : areas(base)) {
      for (Check check : base.ordinaryChecks().toList()) {
        if (check.area().equals(area) && !check.danger()) {
          add(free("", check.id()), check, check.ask(), check.area());
        }
      }
    }
    for (Repair repair : base.repairs().values()) {
      String area =
          repair.removes().keySet().stream()
              .findFirst()
              .map(c -> base.causes().get(c).area())
              .orElse("");
      add(free("r", repair.id()), repair, repair.name(), area);
    }
    int number = 0;
    for (SetUp setUp : base.setUps().values()) {
      if (!setUp.isCondition()) {
        add("s" + ++number, setUp, setUp.name(), "");
      }
    }
    number = 0;
    for (Check proof : base.proofs()) {
      add("p" + ++number, proof, proof.ask(), "");
    }
    phrases = new Phrases(ways(), base.telephone().spoken().synonyms());
  }

  /**
   * A free label. In the rare case that two cards would get the same, the later one gets the next.
   */
  private String free(String kind, String id) {
    CRC32 sum = new CRC32();
    sum.update(id.getBytes(StandardCharsets.UTF_8));
    int number = (int) (sum.getValue() % NUMBERS);
    while (things.containsKey(kind + (FIRST + number))) {
      number = (number + 1) % NUMBERS;
    }
    return kind + (FIRST + number);
  }

  /** Set-ups by their labels; by name only if nobody enters them. */
  String setUps(List<String> ids, RuleBase base) {
    return ids.stream()
        .map(
            id ->
                things.values().stream()
                    .filter(t -> t.card() instanceof SetUp && t.card().id().equals(id))
                    .findFirst()
                    .map(Thing::label)
                    .orElseGet(() -> base.setUps().get(id).name()))
        .collect(Collectors.joining(", "));
  }

  /** A check, proof, repair or set-up with its label. */
  public record Thing(String label, Card card, String words, String area) {}

  private static List<String> areas(RuleBase base) {
    return base.ordinaryChecks().map(Check::area).distinct().toList();
  }

  private void add(String label, Card card, String words, String area) {
    things.put(label, new Thing(label, card, words, area));
  }

  private Map<String, List<String>> ways() {
    Map<String, List<String>> ways = new LinkedHashMap<>();
    for (Thing thing : things.values()) {
      List<String> all =
          new ArrayList<>(List.of(thing.words(), thing.card().id().replace('-', ' ')));
      if (thing.card() instanceof Check check) {
        all.add(check.lay());
        check.measures().ifPresent(m -> all.add("measure " + thing.card().id().replace('-', ' ')));
      }
      all.removeIf(String::isBlank);
      ways.put(thing.label(), all);
    }
    return ways;
  }

  public List<Thing> all() {
    return List.copyOf(things.values());
  }

  /** What a line names exactly, by the label or the id of a card. */
  public Optional<Thing> named(String line) {
    String text = line.strip().toLowerCase(Locale.ROOT);
    Optional<Thing> labelled = Optional.ofNullable(things.get(text.replaceAll("\\s+", "")));
    return labelled.or(
        () ->
            things.values().stream()
                .filter(t -> t.card().id().equals(text.replace(' ', '-')))
                .findFirst());
  }

  /**
   * What somebody may have meant, the most likely first. Where they speak of looking or measuring,
   * the checks come before the work, because Enter takes the first.
   */
  public List<Thing> meant(String words) {
    List<Phrases.Heard> heard = phrases.hear(words, MOST_FOUND);
    boolean looking = LOOKING.matcher(words).find();
    return heard.stream()
        .filter(h -> h.share() >= WORTH_SHOWING * heard.get(0).share())
        .map(h -> things.get(h.id()))
        .sorted(Comparator.comparing(t -> looking && !(t.card() instanceof Check)))
        .toList();
  }
}
