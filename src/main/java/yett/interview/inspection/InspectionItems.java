package yett.interview.inspection;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.site.Site;
import yett.knowledge.Check;
import yett.knowledge.InspectionKind;
import yett.knowledge.Place;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;

/** Lists what belongs to the inspection of a gate, in walking order by place. */
public final class InspectionItems {
  private final RuleBase base;

  /** Places by check id, kept because an inspection needs all of them at every step. */
  private final Map<String, Place> places = new ConcurrentHashMap<>();

  /** The items among the checks of this rule base. */
  public InspectionItems(RuleBase base) {
    this.base = base;
  }

  /**
   * The checks and proofs of what is fitted, whoever may make them. All proofs belong to an
   * inspection.
   */
  List<Check> of(InspectionKind kind, Site site) {
    List<Check> items = new ArrayList<>();
    Stream.concat(
            base.ordinaryChecks().filter(c -> c.inspected().at().contains(kind)),
            base.proofs().stream())
        .filter(site::allows)
        .forEach(items::add);
    items.sort(Comparator.comparingInt(c -> Place.all().indexOf(place(c))));
    return items;
  }

  /**
   * The place where a check is made: its own; or that of the looks of its area in the same set-ups;
   * or else the first place with these set-ups.
   */
  Place place(Check check) {
    return check
        .place()
        .orElseGet(
            () ->
                places.computeIfAbsent(
                    check.id(), id -> near(check).orElseGet(() -> first(check))));
  }

  /** Heading for a check: its place, or its set-up where no look is made in that set-up. */
  String where(Check check) {
    Optional<Place> place = check.place().or(() -> near(check));
    String state =
        check.needs().stream()
            .filter(n -> base.setUps().containsKey(n) && !base.setUps().get(n).isCondition())
            .map(n -> base.setUps().get(n).name())
            .map(InspectionItems::lower)
            .collect(Collectors.joining(", "));
    return place.isPresent() || state.isEmpty()
        ? place(check).name()
        : state.substring(0, 1).toUpperCase(Locale.ROOT) + state.substring(1);
  }

  private static String lower(String name) {
    return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }

  private Optional<Place> near(Check check) {
    List<String> state = state(check.needs());
    return base
        .ordinaryChecks()
        .filter(c -> c.place().isPresent() && c.area().equals(check.area()))
        .map(c -> c.place().get())
        .filter(p -> state(p.needs()).equals(state))
        .collect(Collectors.groupingBy(p -> p, Collectors.counting()))
        .entrySet()
        .stream()
        .min(
            Comparator.<Map.Entry<Place, Long>>comparingLong(e -> -e.getValue())
                .thenComparingInt(e -> Place.all().indexOf(e.getKey())))
        .map(Map.Entry::getKey);
  }

  private Place first(Check check) {
    List<String> state = state(check.needs());
    List<Place> places = Place.all();
    return places.stream()
        .filter(p -> state(p.needs()).equals(state))
        .findFirst()
        .orElseGet(
            () ->
                places.stream()
                    .filter(p -> !p.needs().isEmpty() && state.containsAll(state(p.needs())))
                    .findFirst()
                    .orElse(places.get(0)));
  }

  /** The set-ups that have to be entered, without those that are only conditions. */
  private List<String> state(List<String> needs) {
    return needs.stream()
        .filter(n -> base.setUps().containsKey(n) && !base.setUps().get(n).isCondition())
        .map(n -> n.equals(SetUp.ABLE_TO_RUN) ? SetUp.GATE_RUNNING : n)
        .sorted()
        .toList();
  }
}
