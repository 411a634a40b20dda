package yett.saying;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import yett.knowledge.Role;
import yett.saying.Heard.Found;

/**
 * What one line of speech means: of each clause the thing that fits best, then what fits nearly as
 * well; dangers by a measure of their own.
 */
final class Listening {
  private static final int MOST = 5;

  /** Of what a clause may mean, only what fits nearly as well as the best is offered too. */
  private static final double NEARLY = 0.75;

  /** The same of dangers, each of which is asked about by itself. */
  private static final double NEARLY_DANGER = 0.8;

  /** A part with as many words at most is torn out of what it means: "away it went". */
  private static final int FEW_WORDS = 5;

  /** As far as a few words may tell of a danger better than the whole does. */
  private static final double BETTER = 0.2;

  /** Two outcomes of one check that fit alike: only the check is clear. */
  private static final double ALIKE = 0.02;

  /** Without one of these, nobody says that it works again: "it opened, then stopped". */
  private static final Pattern WELL_NOW =
      Pattern.compile(
          "(?i)\\b(?:again|now|fine|ok(?:ay)?|normal(?:ly)?|usual(?:ly)?|well|good|better"
              + "|never mind|perfect(?:ly)?|all ?right|alright|works?|working|runs?(?! back)|fixed"
              + "|solved|sorted|repaired|trick|after all|is back|back (?:on|up|to|in)|gone|over"
              + "|healed|cured|should|before|always|ever|came (?:on|back|up|alive)"
              + "|no (?:more|longer)|any ?more)\\b");

  private final Hearing hearing;
  private final Calibration calibration;
  private final Map<Thing, Thing> tellsOf = new HashMap<>();
  private final Map<Thing, Double> best = new LinkedHashMap<>();
  private final Map<Thing, Double> dangers = new LinkedHashMap<>();
  private final List<Found> firsts = new ArrayList<>();

  /** How well dangers fit the whole of what was said. */
  private final Map<Thing, Double> whole = new HashMap<>();

  private Listening(Hearing hearing) {
    this.hearing = hearing;
    this.calibration = hearing.calibration();
    hearing
        .base()
        .telephone()
        .spoken()
        .tellsOf()
        .forEach((kind, cards) -> cards.forEach((id, danger) -> tellsOf(kind, id, danger)));
  }

  private void tellsOf(String kind, String id, Map<String, String> danger) {
    Thing said = new Thing(Thing.Kind.valueOf(kind.toUpperCase(Locale.ROOT)), id, "");
    danger.forEach((c, o) -> tellsOf.put(said, new Thing(Thing.Kind.DANGER, c, o)));
  }

  static Heard to(String words, Hearing hearing) {
    Listening listening = new Listening(hearing);
    Clauses.of(words).forEach(listening::clause);
    hearing
        .withoutAddOns()
        .ifPresent(
            plain ->
                to(words, plain).dangers().stream()
                    .filter(f -> hearing.base().checks().containsKey(f.thing().card()))
                    .forEach(f -> listening.dangers.merge(f.thing(), f.weight(), Math::max)));
    return listening.heard();
  }

  private void clause(String words) {
    Map<Thing, Double> fits = hearing.fits(words);
    if (!Negation.in(words)) {
      fits.remove(Thing.DENIAL);
    }
    tellsOf.forEach(
        (said, danger) -> {
          if (fits.containsKey(said)) {
            fits.merge(danger, fits.get(said), Math::max);
          }
        });
    if (whole.isEmpty()) {
      whole.putAll(fits);
    } else if (words.split("\\s+").length <= FEW_WORDS) {
      fits.replaceAll((thing, fit) -> isAsked(thing) ? torn(thing, fit) : fit);
    }
    double other = best(fits, this::isHarmless);
    double finding = best(fits, Listening::isFinding);
    double nothing = best(fits, t -> t.kind() == Thing.Kind.NOTHING);
    double danger = best(fits, this::isAsked);
    double enoughForDanger =
        max(calibration.danger(), other - calibration.behind(), NEARLY_DANGER * danger);
    double enough = max(calibration.finding(), nothing, NEARLY * finding);
    boolean well = WELL_NOW.matcher(words).find();
    List<Found> found = new ArrayList<>();
    fits.forEach(
        (thing, fit) -> {
          if (isAsked(thing) && fit >= enoughForDanger) {
            dangers.merge(thing, fit, Math::max);
          } else if (isFinding(thing) && fit >= enough && (!isAsUsual(thing) || well)) {
            best.merge(thing, fit, Math::max);
            found.add(new Found(thing, fit));
          }
        });
    found.stream().min(BY_WEIGHT).ifPresent(firsts::add);
  }

  /** What is pressing may well be so because there is danger: "we need an ambulance". */
  private boolean isHarmless(Thing thing) {
    return thing.kind() != Thing.Kind.DANGER
        && thing.kind() != Thing.Kind.PRESSING
        && !tellsOf.containsKey(thing);
  }

  private double torn(Thing danger, double fit) {
    double much = whole.getOrDefault(danger, 0.0) + BETTER;
    return fit > much ? much + calibration.torn() * (fit - much) : fit;
  }

  private static double best(Map<Thing, Double> fits, Predicate<Thing> which) {
    return fits.entrySet().stream()
        .filter(e -> which.test(e.getKey()))
        .mapToDouble(Map.Entry::getValue)
        .max()
        .orElse(0);
  }

  private static double max(double... values) {
    return Arrays.stream(values).max().orElseThrow();
  }

  /** Of a complaint and a look that fit alike, it is the complaint that people call about. */
  private static final Comparator<Found> BY_WEIGHT =
      Comparator.comparingDouble(Listening::rank).reversed().thenComparing(f -> f.thing().key());

  private static double rank(Found found) {
    return found.weight() + (found.thing().kind() == Thing.Kind.COMPLAINT ? ALIKE : 0);
  }

  private static boolean isAsUsual(Thing thing) {
    return thing.equals(DangerSayings.AS_USUAL);
  }

  private static boolean isFinding(Thing thing) {
    return thing.kind() != Thing.Kind.DANGER && thing.kind() != Thing.Kind.NOTHING;
  }

  /** What only the people of the trade can say is not asked of anybody by their words. */
  private boolean isAsked(Thing thing) {
    return thing.kind() == Thing.Kind.DANGER
        && hearing.base().checks().get(thing.card()).who() == Role.CALLER;
  }

  private Heard heard() {
    List<Found> findings = new ArrayList<>();
    Set<String> cards = new HashSet<>();
    Stream.concat(firsts.stream().sorted(BY_WEIGHT), sorted(best))
        .filter(f -> cards.add(card(f)))
        .limit(MOST)
        .map(this::clear)
        .forEach(findings::add);
    return new Heard(sorted(dangers).limit(MOST).toList(), findings);
  }

  /** All that is said of one card counts once. */
  private static String card(Found found) {
    return found.thing().kind() + found.thing().card();
  }

  private static Stream<Found> sorted(Map<Thing, Double> fits) {
    return fits.entrySet().stream().map(e -> new Found(e.getKey(), e.getValue())).sorted(BY_WEIGHT);
  }

  /** The check alone where more than one of its outcomes may be meant. */
  private Found clear(Found found) {
    Thing thing = found.thing();
    boolean alike =
        thing.kind() == Thing.Kind.OUTCOME
            && best.entrySet().stream()
                .filter(e -> e.getKey().card().equals(thing.card()))
                .filter(e -> e.getKey().kind() == Thing.Kind.OUTCOME)
                .filter(e -> !e.getKey().equals(thing))
                .anyMatch(e -> e.getValue() > found.weight() - ALIKE);
    return alike ? new Found(new Thing(Thing.Kind.CHECK, thing.card(), ""), found.weight()) : found;
  }
}
