package yett.desk;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import yett.casebook.CaseId;
import yett.casebook.Casebook;
import yett.casebook.DataDirectory;
import yett.casebook.Outbox;
import yett.interview.course.Expertise;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;

/**
 * Makes a separate casebook with the gates of Harrow Quay, an invented harbour estate, and two
 * years of invented visits. The interview runs through each visit as through a real one.
 */
public final class Demo {
  private static final int MOST_STEPS = 400;
  private static final long DAY = 86_400;

  private final Expertise expertise;
  private final Instant now;
  private final Random random = new Random(20_260);

  /**
   * @param now the visits are in the two years before this
   */
  public Demo(Expertise expertise, Instant now) {
    this.expertise = expertise;
    this.now = now;
  }

  /**
   * A gate with its story.
   *
   * @param fault id of what went wrong between two inspections; empty for nothing
   * @param seen what the last inspection finds, as check and outcome
   */
  private record Gate(String name, Map<String, String> site, String fault, Set<String> seen) {}

  private static final List<Gate> GATES =
      List.of(
          new Gate("North gate", Map.of("opening", "6 m"), "chain-slack", Set.of()),
          new Gate("Fish dock", Map.of("leaf-mass", "500 kg"), "", Set.of("track-look dirty")),
          new Gate("Net loft", Map.of("beams", "two"), "beam-dirty", Set.of()),
          new Gate("Chandler's gate", Map.of("opening", "4 m"), "", Set.of("edge-look hurt")),
          new Gate("Rope walk", Map.of("support", "cantilever"), "chain-stiff", Set.of()),
          new Gate("Ferry", Map.of("usage-class", "class-ii"), "", Set.of("terminal-look crusted")),
          new Gate("Ice house", Map.of("climate", "temperate"), "", Set.of("chain-surface dry")),
          new Gate("Boatyard", Map.of("opening", "7 m"), "marker-displaced", Set.of()),
          new Gate("Customs shed", Map.of("keypad", "none"), "", Set.of("edge-reverses fail")),
          new Gate("Sail store", Map.of("radio", "none"), "", Set.of()),
          new Gate("Slipway", Map.of("loops", "none"), "battery-terminal-loose", Set.of()),
          new Gate("Harbour office", Map.of("stop-station", "none"), "", Set.of()));

  /** A gate that the public uses is inspected every half year, so its readings show a trend. */
  private static final Gate HALF_YEARLY =
      GATES.stream().filter(g -> g.site().containsKey("usage-class")).findFirst().orElseThrow();

  /** Its further inspections: how many days ago, and how far its readings had moved by then. */
  private static final Map<Long, Double> FURTHER = new TreeMap<>(Map.of(-150L, 1.5, -10L, 1.9));

  public static int visits() {
    return GATES.stream().mapToInt(g -> g.fault().isEmpty() ? 2 : 3).sum() + FURTHER.size();
  }

  /**
   * Writes the casebook into a folder.
   *
   * @param step called for each visit
   */
  public void fill(Path folder, Runnable step) {
    DataDirectory directory = DataDirectory.ofUser(Map.of("YETT_HOME", folder.toString()));
    try (Casebook casebook = Casebook.open(directory.casebook())) {
      int gates = 0;
      for (Gate gate : GATES) {
        long commissioned = 715 - 5L * gates;
        visit(casebook, directory, gate, commissioned, InspectionKind.COMMISSIONING, 0);
        step.run();
        if (!gate.fault().isEmpty()) {
          visit(casebook, directory, gate, commissioned - 200, null, 0);
          step.run();
        }
        visit(casebook, directory, gate, 380 - 9L * gates, InspectionKind.SERVICE, 1);
        step.run();
        gates++;
      }
      FURTHER.forEach(
          (day, age) -> {
            visit(casebook, directory, HALF_YEARLY, -day, InspectionKind.SERVICE, age);
            step.run();
          });
    }
  }

  /**
   * @param inspection null for a search for the gate's fault
   * @param age how far the readings of a gate in order have moved, as in {@link DemoGate}
   */
  private void visit(
      Casebook casebook,
      DataDirectory directory,
      Gate gate,
      long daysAgo,
      InspectionKind inspection,
      double age) {
    Walking clock = new Walking(now.minusSeconds(daysAgo * DAY - 40L * random.nextInt(60)));
    Optional<InspectionKind> kind = Optional.ofNullable(inspection);
    boolean service = kind.equals(Optional.of(InspectionKind.SERVICE));
    DemoVisit person =
        new DemoVisit(
            random,
            gate.site(),
            Optional.of(gate.fault()).filter(f -> kind.isEmpty()),
            service ? gate.seen() : Set.of(),
            age);
    List<Event.Earlier> earlier = new Baselines(casebook, expertise).of(gate.name());
    CaseId id = casebook.newCase(gate.name(), clock.instant());
    try (OpenCase open =
        new OpenCase(
            casebook,
            id,
            expertise.newInterview(),
            Optional.of(Role.TECHNICIAN),
            clock,
            new Outbox(directory.data(), casebook.name()).newParcel(id))) {
      RuleBase cards = expertise.base();
      open.record(Event.Opened.with(gate.name(), Role.TECHNICIAN, cards, kind, earlier));
      for (int s = 0; s < MOST_STEPS && !(open.moment().step() instanceof Step.Finished); s++) {
        open.record(person.answers(open.moment()).toArray(Event[]::new));
      }
    }
  }

  /** A clock that advances two minutes from one answer to the next. */
  private static final class Walking extends Clock {
    private Instant at;

    Walking(Instant at) {
      this.at = at;
    }

    @Override
    public Instant instant() {
      at = at.plusSeconds(120);
      return at;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }
}
