package yett.study.gate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.rules.Conclusion.Expectation;
import yett.study.BandReading;
import yett.study.FaultyGate;

/**
 * A gate of flesh and blood in place of the cards' tables: one or two faults put into a machine
 * that answers by physics. How often a fault occurs is the only thing it shares with the cards.
 */
public final class SimulatedGate implements FaultyGate {
  /** How often a second, independent fault is there as well. */
  private static final double SECOND_FAULT = 0.12;

  /** How often somebody looks at the wrong thing. */
  private static final double SLIP = 0.02;

  /** How often a user says what was noticed. */
  private static final double SAID = 0.65;

  private final Gate gate;
  private final long seed;
  private final Map<String, String> site = new LinkedHashMap<>();
  private final List<String> complaints = new ArrayList<>();
  private final Set<String> truth;
  private final Map<String, Answer> told = new HashMap<>();

  /** By check, what it would have read when the gate was handed over. */
  private final Map<String, Double> asHandedOver;

  private List<Event.Earlier> earlier = List.of();
  private boolean forNothing;
  private int repairs;
  private int tries;

  private SimulatedGate(
      long seed,
      Gate gate,
      Map<String, String> site,
      List<String> complaints,
      Map<String, Double> asHandedOver) {
    this.seed = seed;
    this.gate = gate;
    this.site.putAll(site);
    this.complaints.addAll(complaints);
    this.truth = Set.copyOf(gate.wrong());
    this.asHandedOver = asHandedOver;
  }

  /**
   * Draws a gate about which somebody complains.
   *
   * @param often how often each fault occurs, to any scale
   */
  public static SimulatedGate of(long seed, Map<String, Double> often) {
    Random random = new Random(seed * 0x9E3779B97F4A7C15L);
    while (true) {
      Map<String, String> site = new LinkedHashMap<>();
      Gate gate = sound(random, site);
      Map<String, Double> asHandedOver =
          Commissioning.readings(gate, new Random(seed * 0xD1B54A32D192ED03L));
      Set<String> faults = new LinkedHashSet<>(Set.of(drawn(random, often)));
      if (random.nextDouble() < SECOND_FAULT) {
        faults.add(drawn(random, often));
      }
      Fault.happen(gate, faults, Fault.between(random, 0.5, 14), random);
      boolean outage = random.nextDouble() < (positionFault(gate) ? 0.8 : 0.25);
      boolean mainsWereThere = gate.supply.mains();
      if (outage && (positionFault(gate) || !mainsWereThere || random.nextDouble() < 0.3)) {
        gate.losePower();
      }
      List<String> complaints = new ArrayList<>(Symptoms.of(gate, outage, random));
      if (!complaints.isEmpty() && !gate.wrong().isEmpty()) {
        String surely = complaints.get(0);
        complaints.removeIf(c -> !c.equals(surely) && random.nextDouble() > SAID);
        return new SimulatedGate(seed, gate, site, complaints, asHandedOver);
      }
    }
  }

  private static boolean positionFault(Gate gate) {
    return !gate.markerThere
        || !gate.sensorAlive
        || gate.markerGap > 0.014
        || gate.markerOffset != 0;
  }

  private static String drawn(Random random, Map<String, Double> often) {
    Map<String, Double> known = new TreeMap<>(often);
    known.keySet().retainAll(Fault.ALL.keySet());
    double at = random.nextDouble() * known.values().stream().mapToDouble(d -> d).sum();
    String last = "";
    for (Map.Entry<String, Double> entry : known.entrySet()) {
      last = entry.getKey();
      at -= entry.getValue();
      if (at < 0) {
        break;
      }
    }
    return last;
  }

  /** A sound gate as gates differ, and what is noted of it. */
  private static Gate sound(Random r, Map<String, String> site) {
    double opening = Math.round(10 * Fault.between(r, 3.5, 7)) / 10.0;
    double mass = 10 * Math.round(Fault.between(r, 20, 55));
    double temperature = Math.round(Fault.between(r, -4, 30));
    double age = 1 + r.nextInt(6);
    Gate gate = new Gate(opening, mass, temperature);
    site.put("opening", opening + " m");
    site.put("chain-span", Math.round(10 * gate.chain.span) / 10.0 + " m");
    site.put("leaf-mass", (int) mass + " kg");
    site.put("usual-temperature", (int) temperature + " C");
    site.put("battery-age", (int) age + " years");
    gate.batteries.health = Math.max(0.6, 1.02 - 0.055 * age + 0.04 * r.nextGaussian());
    gate.batteries.health = Math.min(1, gate.batteries.health);
    gate.batteries.jointResistance = Fault.between(r, 0.0006, 0.003);
    gate.supply.service = Fault.between(r, 222, 238);
    gate.supply.feederResistance = Fault.between(r, 0.3, 1.2);
    gate.noLoad = Fault.between(r, 1.5, 2.6);
    gate.winding = Fault.between(r, 0.4, 1);
    gate.rolling = Fault.between(r, 0.011, 0.027);
    gate.chain.hang(Fault.between(r, 0.0085, 0.018) * gate.chain.span);
    gate.chain.wear = Fault.between(r, 0, 1.3);
    gate.chain.offset = Fault.between(r, 0, 0.008);
    gate.thresholdNoted = gate.levelForce() + Fault.between(r, 120, 180);
    gate.threshold = gate.thresholdNoted;
    gate.markerGap = Fault.between(r, 0.004, 0.009);
    gate.beamMargin = Math.exp(Fault.between(r, Math.log(1.8), Math.log(8)));
    gate.edgeOhms = Fault.between(r, 8000, 8400);
    return gate;
  }

  @Override
  public Map<String, String> site() {
    return site;
  }

  /** By check, without the error of an instrument. */
  public Map<String, Double> asHandedOver() {
    return asHandedOver;
  }

  /** Lets whoever comes know what was read before. */
  public SimulatedGate knownFrom(List<Event.Earlier> readings) {
    earlier = List.copyOf(readings);
    return this;
  }

  /** Lets whoever comes read the same things again for nothing. */
  public SimulatedGate readForNothing(boolean all) {
    forNothing = all;
    return this;
  }

  @Override
  public List<String> readForNothing() {
    return forNothing ? earlier.stream().map(Event.Earlier::check).toList() : List.of();
  }

  @Override
  public List<Event.Earlier> earlier() {
    return earlier;
  }

  @Override
  public List<String> complaints() {
    return List.copyOf(complaints);
  }

  @Override
  public Set<String> truth() {
    return truth;
  }

  @Override
  public Set<String> remaining() {
    return gate.wrong();
  }

  private Random random(String what) {
    Random random = new Random(31L * (seed * 1_000_003L + what.hashCode()) + repairs);
    random.nextInt();
    return random;
  }

  @Override
  public Answer answer(Check check, Optional<Expectation> usual) {
    return told.computeIfAbsent(check.id(), id -> look(check, usual));
  }

  private Answer look(Check check, Optional<Expectation> usual) {
    Random random = random(check.id());
    if (check.danger()) {
      return new Answer.Chosen(check.outcomes().get(0).id());
    }
    if (check.kind() == Check.Kind.PROOF) {
      return new Answer.Chosen(proved(check.id(), random) ? Check.PASS : Check.FAIL);
    }
    if (check.measures().isPresent()) {
      return read(check, usual, random);
    }
    Words.Sight sight = Words.ALL.get(check.id());
    String sound = check.outcomes().get(0).id();
    String word = sight == null ? sound : sight.of(gate, random);
    if (!word.isEmpty() && random.nextDouble() < SLIP) {
      word = check.outcomes().get(random.nextInt(check.outcomes().size())).id();
    }
    return word.isEmpty() ? new Answer.CannotTell() : new Answer.Chosen(word);
  }

  /** A part that no fault here changes reads as on a sound gate. */
  private Answer read(Check check, Optional<Expectation> usual, Random random) {
    Readings.Reading reading = Readings.ALL.get(check.id());
    if (reading == null) {
      return BandReading.of(check, 0, usual, random);
    }
    double value = reading.of(gate, random);
    return Double.isNaN(value)
        ? new Answer.CannotTell()
        : BandReading.read(check.measures().orElseThrow(), value, random);
  }

  private boolean proved(String proof, Random random) {
    return switch (proof) {
      case "reversal-closing", "reversal-opening" -> gate.reversingForce() < 450;
      case "beam-stops-closing", "beam-stops-opening" -> !gate.beamUnfed;
      case "edge-reverses" -> gate.edgeSound();
      case "limits-hold" -> Math.abs(gate.error(true, random)) < 0.07;
      case "power-loss-behaviour" -> !gate.batteries.worn() && gate.batteries.charge > 0.3;
      case "usual-run" -> gate.contents(random);
      default -> true;
    };
  }

  @Override
  public void repair(Repair repair) {
    repairs++;
    told.clear();
    Mending.ALL.getOrDefault(repair.id(), g -> {}).accept(gate);
  }

  @Override
  public boolean runs() {
    return gate.contents(random("try " + tries++));
  }

  /** Checks that it can answer. */
  public static boolean answers(String check) {
    return Readings.ALL.containsKey(check) || Words.ALL.containsKey(check);
  }

  /** What shows without a power cut; somebody who stands before the gate sees all of it. */
  @Override
  public boolean sameTrouble() {
    List<String> seen = new ArrayList<>(complaints);
    seen.removeAll(List.of("lost-after-power-cut", "fails-without-mains"));
    return Symptoms.of(gate, false, random("trouble " + tries)).containsAll(seen);
  }
}
