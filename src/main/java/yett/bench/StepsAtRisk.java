package yett.bench;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import yett.knowledge.Caution;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.SpokenWork;

/**
 * Finds repairs whose steps speak of dangerous work that their set-ups or hazards do not match.
 * Which set-ups match follows from the conditions: the cover is off in those that {@code covers-on}
 * excludes, and the gate cannot run in those that {@code able-to-run} excludes.
 */
final class StepsAtRisk {
  private static final Set<String> ELECTRIC = Set.of("mains", "live-mains", "battery");
  private static final Set<String> MOVING = Set.of("moving-leaf");
  private static final Set<String> RAISED = Set.of("raised-leaf");
  private static final Set<String> BATTERY = Set.of("battery");
  private static final Set<String> DRAWN_IN = Set.of("pinch-point");

  private final RuleBase base;
  private final Set<String> open;
  private final Set<String> still;
  private final Set<String> run = new HashSet<>(Set.of(SetUp.GATE_RUNNING, SetUp.ABLE_TO_RUN));

  private StepsAtRisk(RuleBase base) {
    this.base = base;
    this.open = excludedBy(SetUp.COVERS_ON);
    this.still = excludedBy(SetUp.ABLE_TO_RUN);
    still.stream().filter(s -> !dead(s)).forEach(run::add);
  }

  /** Remarks in sentences, in the order of the cards. */
  static List<String> remarks(RuleBase base) {
    StepsAtRisk risk = new StepsAtRisk(base);
    return risk.open.isEmpty() || risk.still.isEmpty()
        ? List.of()
        : base.repairs().values().stream()
            .filter(r -> base.isOwn("repair " + r.id()))
            .flatMap(risk::on)
            .toList();
  }

  private Set<String> excludedBy(String condition) {
    SetUp setUp = base.setUps().get(condition);
    return setUp == null ? Set.of() : new HashSet<>(setUp.excludes());
  }

  /** Whether nothing can turn in this set-up, not even a motor that is free of the leaf. */
  private boolean dead(String setUp) {
    return base.withOuter(List.of(setUp)).contains(SetUp.LOCKED_OFF);
  }

  private Stream<String> on(Repair repair) {
    return IntStream.range(0, repair.steps().size())
        .boxed()
        .flatMap(
            step ->
                Stream.of(SpokenWork.values())
                    .flatMap(
                        work ->
                            work.in(repair.steps().get(step)).stream()
                                .map(said -> missing(repair, work))
                                .filter(missing -> !missing.isEmpty())
                                .map(missing -> remark(repair, step, work, missing))));
  }

  private static String remark(Repair repair, int step, SpokenWork work, List<String> missing) {
    return "Repair "
        + repair.id()
        + ": its step "
        + (step + 1)
        + " speaks of "
        + work.words()
        + ", and the card names no "
        + String.join(" and no ", missing)
        + ".";
  }

  private List<String> missing(Repair repair, SpokenWork work) {
    boolean caller = repair.who() == Role.CALLER;
    boolean isDead = base.withOuter(repair.needs()).contains(SetUp.LOCKED_OFF);
    return switch (work) {
      case RUNNING ->
          missing(repair, caller || needs(repair, run), "set-up in which it can run", MOVING);
      case OPEN_OPERATOR -> missing(repair, needs(repair, open), "set-up for it", anyIf(isDead));
      case CHAIN_AND_SPROCKET ->
          missing(repair, needs(repair, still), "set-up in which nothing turns", DRAWN_IN);
      case TERMINALS -> missing(repair, needs(repair, open), "set-up for it", anyIf(isDead));
      case RAISED_LEAF ->
          missing(repair, needs(repair, still), "set-up in which nothing turns", RAISED);
      case BATTERY -> missing(repair, true, "", BATTERY);
    };
  }

  /** Nothing more is warned of where it is proved dead: the way into that set-up does it. */
  private static Set<String> anyIf(boolean dead) {
    return dead ? Set.of() : ELECTRIC;
  }

  private boolean needs(Repair repair, Collection<String> setUps) {
    return base.withOuter(repair.needs()).stream().anyMatch(setUps::contains);
  }

  private List<String> missing(Repair repair, boolean there, String setUp, Set<String> hazards) {
    List<String> missing = new ArrayList<>();
    if (!there) {
      missing.add(setUp);
    }
    List<String> known =
        base.cautions().values().stream()
            .map(Caution::hazard)
            .filter(hazards::contains)
            .distinct()
            .sorted()
            .toList();
    if (!known.isEmpty() && repair.hazards().stream().noneMatch(hazards::contains)) {
      missing.add("hazard " + String.join(" or ", known));
    }
    return missing;
  }
}
