package yett.knowledge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import yett.knowledge.Check.Outcome;
import yett.quantity.Quantity;
import yett.quantity.Reading;
import yett.quantity.Unit;

/** Reads one card from its fields. */
record CardReader(Fields fields, String id) {
  static final String LEADS_TO = "leads-to";

  private static final double USUAL_RETEST_FAILS = 0.97;
  private static final double USUAL_UNMENTIONED = 0.5;

  Cause cause() {
    // Read later, when all cards are known: see CauseRows.
    fields.has(CauseRows.SHOWS);
    fields.has(CauseRows.AFTER);
    fields.has(CauseRows.REMOVED_BY);
    return new Cause(
        id,
        fields.text("name"),
        fields.text("area", ""),
        fields.number("prior", 0.0001, 0.9),
        fields.chances("consequences"),
        fields.chances(LEADS_TO),
        fields.chance("retest-fails", USUAL_RETEST_FAILS),
        fields.conditions("only-if"),
        fields.text("arises", ""),
        fields.text("prevent", ""),
        fields.text("source"));
  }

  /** Reads an effect without its rows; these need the checks and are read later: see CauseRows. */
  Effect effect() {
    fields.has(CauseRows.SHOWS);
    return new Effect(
        id,
        fields.text("name"),
        fields.text("area", ""),
        Map.of(),
        fields.chances(LEADS_TO),
        fields.text("source"));
  }

  Check check() {
    Optional<Measures> measures = measures();
    boolean measured = fields.has("measures");
    boolean danger = fields.flag("danger");
    List<Outcome> outcomes = measured ? bands(measures) : outcomes();
    double[] otherwise = LikelihoodRow.sound(fields, "otherwise", outcomes);
    return new Check(
        id,
        Check.Kind.CHECK,
        new Check.Question(
            fields.text("name", ""),
            fields.text("ask"),
            fields.text("lay", ""),
            fields.text("how", ""),
            measures,
            outcomes,
            several(measured || danger, outcomes),
            columns(measured, danger)),
        new Check.Evidence(likelihood(outcomes, otherwise), otherwise, reliability(), repeats(), 1),
        new Check.Work(
            role("who", Role.TECHNICIAN),
            fields.number("minutes", 0, 240),
            fields.texts("needs"),
            fields.texts("hazards"),
            place(measured || danger)),
        fields.text("area", ""),
        fields.conditions("only-if"),
        danger,
        inspected(outcomes),
        fields.text("source"));
  }

  Check complaint() {
    List<Outcome> outcomes =
        List.of(
            new Outcome("unsaid", "not said", Optional.empty()),
            new Outcome(Check.SAID, "said", Optional.empty()));
    String name = fields.text("name");
    return binary(
        Check.Kind.COMPLAINT,
        name,
        fields.text("lay", name),
        fields.text("how", ""),
        outcomes,
        fields.chance("unmentioned", USUAL_UNMENTIONED));
  }

  Check proof() {
    List<Outcome> outcomes =
        List.of(
            new Outcome(Check.PASS, fields.text("pass"), Optional.empty()),
            new Outcome(Check.FAIL, fields.text("fail"), Optional.empty()));
    return binary(
        Check.Kind.PROOF,
        fields.text("ask"),
        fields.text("lay", ""),
        fields.text("how", ""),
        outcomes,
        1);
  }

  private Check binary(
      Check.Kind kind,
      String ask,
      String lay,
      String how,
      List<Outcome> outcomes,
      double unmentioned) {
    Map<String, double[]> likelihood = new LinkedHashMap<>();
    fields.chances("likelihood").forEach((c, p) -> likelihood.put(c, new double[] {1 - p, p}));
    double otherwise = fields.chance("otherwise", 0.01);
    return new Check(
        id,
        kind,
        new Check.Question("", ask, lay, how, Optional.empty(), outcomes),
        new Check.Evidence(
            likelihood,
            new double[] {1 - otherwise, otherwise},
            reliability(),
            Optional.empty(),
            unmentioned),
        new Check.Work(
            role("who", kind == Check.Kind.COMPLAINT ? Role.CALLER : Role.TECHNICIAN),
            fields.number("minutes", 0, 0, 240),
            fields.texts("needs"),
            fields.texts("hazards"),
            Optional.empty()),
        fields.text("area", ""),
        fields.conditions("only-if"),
        false,
        kind == Check.Kind.PROOF ? new Inspected(inspections(), List.of()) : Inspected.NEVER,
        fields.text("source"));
  }

  History history() {
    return new History(
        id,
        fields.text("name"),
        fields.text("lay", ""),
        fields.numbers("odds", 0.01, 100),
        fields.conditions("only-if"),
        fields.text("source"));
  }

  Repair repair() {
    List<Repair.Part> parts = new ArrayList<>();
    for (Fields part : fields.innerList("parts")) {
      parts.add(
          new Repair.Part(
              part.text("part"), part.number("price", 0, 0, 100_000), part.text("size", "")));
      part.finish();
    }
    return new Repair(
        id,
        fields.text("name"),
        fields.texts("steps"),
        fields.chances("removes"),
        fields.number("minutes", 0, 1_440),
        List.copyOf(parts),
        fields.texts("needs"),
        role("who", Role.TECHNICIAN),
        fields.texts("hazards"),
        fields.texts("measure-first"),
        fields.texts("entails"),
        fields.texts("proofs"),
        fields.texts("puts-right"),
        fields.conditions("only-if"),
        fields.text("source"));
  }

  SetUp setUp() {
    return new SetUp(
        id,
        fields.text("name"),
        fields.number("enter-minutes", 0, 240),
        fields.number("leave-minutes", 0, 240),
        role("who", Role.TECHNICIAN),
        fields.texts("hazards"),
        fields.texts("within"),
        fields.texts("excludes"),
        fields.texts("enter"),
        fields.texts("leave"),
        fields.texts("enter-again"),
        fields.texts("leave-again"),
        fields.text("source"));
  }

  Caution caution() {
    String word =
        fields.oneOf("word", "warning", List.of("danger", "warning", "caution", "notice"));
    return new Caution(
        id,
        fields.id("hazard"),
        Caution.Word.named(word),
        fields.text("what"),
        fields.text("harm"),
        fields.text("avoid"),
        fields.conditions("only-if"),
        fields.text("source"));
  }

  /**
   * Reads the lines of a stop. Each is a text, or a text under the deed that another danger may
   * rule out.
   */
  private static List<Stop.Line> lines(Fields inner, String role) {
    List<Stop.Line> lines = new ArrayList<>();
    JsonNode all = inner.get(role);
    if (!all.isArray()) {
      return List.of(new Stop.Line(inner.text(role), Optional.empty()));
    }
    for (int i = 0; i < all.size(); i++) {
      JsonNode line = all.get(i);
      String word = line.isObject() ? line.propertyNames().iterator().next() : "";
      if (line.isValueNode()) {
        lines.add(new Stop.Line(line.asString().strip(), Optional.empty()));
      } else if (line.size() == 1 && Stop.DEEDS.contains(word) && line.get(word).isValueNode()) {
        lines.add(new Stop.Line(line.get(word).asString().strip(), Optional.of(word)));
      } else {
        inner.problem(
            role + "/" + i,
            "not-text",
            "expected text, or text under what another danger may rule out, found "
                + Fields.shown(line),
            "Put the line in quotes if it holds a colon, or begin it with one of: "
                + String.join(", ", Stop.DEEDS)
                + ".");
      }
    }
    return List.copyOf(lines);
  }

  Stop stop() {
    Map<Role, List<Stop.Line>> now = new LinkedHashMap<>();
    Fields inner = fields.inner("now");
    for (String word : inner.names()) {
      if (Role.words().contains(word)) {
        now.put(Role.named(word), lines(inner, word));
      } else {
        inner.problem(
            word,
            "unknown-word",
            "\"" + word + "\" is not a known role",
            Names.advice(word, Role.words()));
      }
    }
    if (now.isEmpty()) {
      fields.problem(
          "now",
          "missing-field",
          "a stop must say what to do now",
          "Add steps for the caller and the technician.");
    }
    return new Stop(
        id,
        fields.text("name"),
        now,
        Optional.of(fields.text("leaves", "")).filter(s -> !s.isEmpty()),
        fields.names().contains("goes-on")
            ? Optional.of(role("goes-on", Role.ELECTRICIAN))
            : Optional.empty(),
        fields.flag("inquiry"),
        fields.text("source"));
  }

  SiteQuestion site() {
    Map<String, String> choices = new LinkedHashMap<>();
    Fields inner = fields.inner("choices");
    inner.ids().forEach(name -> choices.put(name, inner.text(name)));
    Optional<Measures> measures = measures();
    if (measures.isEmpty() && choices.isEmpty()) {
      fields.problem(
          "",
          "missing-field",
          "a site question needs \"choices\" or \"measures\"",
          "Add one of them.");
    }
    String usual = fields.text("default");
    if (!choices.isEmpty() && !usual.isEmpty() && !choices.containsKey(usual)) {
      fields.problem(
          "default",
          "unknown-name",
          "\"" + usual + "\" is not one of the choices",
          Names.advice(usual, choices.keySet()));
    }
    measures.ifPresent(m -> fields.parsed("default", m::parse));
    return new SiteQuestion(
        id,
        fields.text("name"),
        fields.text("ask"),
        measures,
        choices,
        usual,
        Optional.of(fields.text("follows", "")).filter(q -> !q.isEmpty()),
        fields.texts("zero-after"),
        fields.text("why", ""),
        fields.conditions("only-if"),
        fields.text("source", ""));
  }

  Planning planning() {
    double handOver = fields.number("hand-over", 1, 100_000);
    return new Planning(
        id,
        fields.number("minute", 0.01, 1_000),
        fields.number("question", 1, 0, 60),
        fields.number("needless", 0, 0, 1_000),
        fields.number("suspicion", 0, 0, 0.99),
        (int) fields.number("patience", 0, 0, 100),
        handOver,
        fields.number("visit", handOver, 1, 100_000),
        fields.number("call-back", 1, 100_000),
        fields.numbers("hazards", 0, 1_000));
  }

  /** The mains part on which a check or repair works, if it has one. */
  Optional<MainsPart> mainsPart() {
    return fields.has("mains-part")
        ? Optional.of(
            MainsPart.named(
                fields.oneOf("mains-part", MainsPart.TERMINAL.word(), MainsPart.words())))
        : Optional.empty();
  }

  /**
   * The place of a look; empty for a check that stands alone.
   *
   * @param alone whether it is measured or warns of danger, so can have no place
   */
  private Optional<Place> place(boolean alone) {
    if (!fields.has("place")) {
      return Optional.empty();
    }
    String place = fields.text("place");
    if (alone) {
      fields.problem(
          "place",
          "no-look",
          "only a look with named outcomes, about no danger, has a place",
          "Leave out \"place\": this is asked by itself.");
    } else if (!place.isEmpty() && Place.named(place).isEmpty()) {
      fields.problem(
          "place",
          "unknown-word",
          "\"" + place + "\" is not in the table of places",
          Names.advice(place, Place.ids()));
    }
    return Place.named(place);
  }

  /**
   * Whether several outcomes may be true at once.
   *
   * @param single whether it is measured or warns of danger, so has one answer
   */
  private boolean several(boolean single, List<Outcome> outcomes) {
    boolean several = fields.flag("several");
    if (several && (single || outcomes.size() == 2)) {
      fields.problem(
          "several",
          "one-answer",
          "only a check with three named outcomes or more, about no danger, has several answers",
          "Leave out \"several\".");
    }
    return several;
  }

  /** What two answers may be about. */
  private Optional<Columns> columns(boolean measured, boolean danger) {
    if (!fields.has("columns")) {
      return Optional.empty();
    }
    Fields inner = fields.inner("columns");
    List<String> names = inner.texts("of");
    Optional<Columns.Reading> counts =
        inner.has("counts")
            ? Optional.of(
                inner.oneOf("counts", "lower", List.of("lower", "higher")).equals("lower")
                    ? Columns.Reading.LOWER
                    : Columns.Reading.HIGHER)
            : Optional.empty();
    Optional<String> tells = Optional.of(inner.text("tells", "")).filter(t -> !t.isEmpty());
    inner.finish();
    if (danger || names.size() != 2 || names.get(0).equals(names.get(1))) {
      fields.problem(
          "columns",
          "two-columns",
          "columns have two different names, and no question about a danger has any",
          "Write for example \"columns: {of: [opening, closing], counts: lower}\".");
      return Optional.empty();
    }
    if (measured != counts.isPresent()) {
      fields.problem(
          "columns",
          "two-columns",
          measured
              ? "it does not say which of two readings counts"
              : "only of readings does the lower or higher count",
          measured
              ? "Add \"counts: lower\" or \"counts: higher\"."
              : "Leave out \"counts\": of two looks, the answer further down the card counts.");
      return Optional.empty();
    }
    return Optional.of(new Columns(names.get(0), names.get(1), counts, tells));
  }

  private Inspected inspected(List<Outcome> outcomes) {
    List<String> remarks = fields.texts("remark");
    List<String> unusual = outcomes.stream().skip(1).map(Outcome::id).toList();
    for (String outcome : remarks) {
      if (!unusual.isEmpty() && !unusual.contains(outcome)) { // already reported if there are none
        fields.problem(
            "remark",
            "unknown-name",
            "\"" + outcome + "\" is not an outcome out of the ordinary",
            Names.advice(outcome, unusual));
      }
    }
    return new Inspected(inspections(), remarks);
  }

  /** The inspections that a check belongs to. */
  private List<InspectionKind> inspections() {
    List<InspectionKind> at = new ArrayList<>();
    for (String word : fields.texts("inspect")) {
      if (InspectionKind.words().contains(word)) {
        at.add(InspectionKind.named(word));
      } else {
        fields.problem(
            "inspect",
            "unknown-word",
            "\"" + word + "\" is not a kind of inspection",
            Names.advice(word, InspectionKind.words()));
      }
    }
    return at;
  }

  private Role role(String field, Role usual) {
    return Role.named(fields.oneOf(field, usual.word(), Role.words()));
  }

  private Map<Role, Double> reliability() {
    Map<Role, Double> reliability = new LinkedHashMap<>();
    fields
        .chances("reliability")
        .forEach(
            (word, chance) -> {
              if (Role.words().contains(word)) {
                reliability.put(Role.named(word), chance);
              } else {
                fields.problem(
                    "reliability/" + word,
                    "unknown-word",
                    "\"" + word + "\" is not a known role",
                    Names.advice(word, Role.words()));
              }
            });
    return reliability;
  }

  private Optional<Check.Repeats> repeats() {
    if (!fields.has("repeats")) {
      return Optional.empty();
    }
    Fields inner = fields.inner("repeats");
    Check.Repeats repeats = new Check.Repeats(inner.text("check"), inner.number("share", 0, 1));
    inner.finish();
    return Optional.of(repeats);
  }

  private Optional<Measures> measures() {
    if (!fields.has("measures")) {
      return Optional.empty();
    }
    Fields inner = fields.inner("measures");
    Optional<Quantity> quantity = inner.parsed("quantity", Quantity::named);
    inner.text("quantity");
    if (quantity.isEmpty()) {
      return Optional.empty();
    }
    Quantity q = quantity.get();
    String counted = q == Quantity.COUNT ? inner.text("unit", "") : "";
    Optional<Unit> given =
        q == Quantity.COUNT || !inner.has("unit")
            ? Optional.of(q.canonical())
            : inner.parsed("unit", text -> unit(text, q));
    if (given.isEmpty()) {
      return Optional.empty();
    }
    Unit unit = given.get();
    String instrument = inner.text("instrument", "eye");
    if (!Instruments.names().contains(instrument)) {
      inner.problem(
          "instrument",
          "unknown-name",
          "\"" + instrument + "\" is not in the table of instruments",
          Names.advice(instrument, Instruments.names()));
    }
    double uncertainty =
        inner
            .parsed("procedure-uncertainty", text -> Reading.parseDifference(text, q, unit).value())
            .orElse(0.0);
    Measures open =
        new Measures(
            q,
            unit,
            counted,
            instrument,
            uncertainty,
            Double.NEGATIVE_INFINITY,
            Double.POSITIVE_INFINITY);
    Measures measures = inner.parsed("possible", text -> within(open, text)).orElse(open);
    inner.finish();
    return Optional.of(measures);
  }

  private static Unit unit(String text, Quantity quantity) {
    Unit unit = Unit.parse(text);
    if (unit.quantity() != quantity) {
      throw new IllegalArgumentException(
          "\""
              + text
              + "\" is a unit of "
              + unit.quantity().label()
              + ", not of "
              + quantity.label());
    }
    return unit;
  }

  private static Measures within(Measures open, String text) {
    String[] ends = text.split("\\s+to\\s+");
    if (ends.length != 2) {
      throw new IllegalArgumentException(
          "\"" + text + "\" is not a range; write it as \"0 V to 60 V\"");
    }
    return new Measures(
        open.quantity(),
        open.unit(),
        open.counted(),
        open.instrument(),
        open.procedureUncertainty(),
        open.parse(ends[0]),
        open.parse(ends[1]));
  }

  /**
   * Reads the row that a cause's card gives for a check: chances of its outcomes, or for a
   * complaint or proof (two outcomes) only the chance of the second.
   *
   * @param name of the field that holds the row
   */
  static double[] row(Fields fields, String name, Check check) {
    if (check.kind() == Check.Kind.CHECK) {
      return LikelihoodRow.read(fields, name, check.outcomes(), check.otherwise());
    }
    double chance = fields.chance(name);
    return new double[] {1 - chance, chance};
  }

  private List<Outcome> outcomes() {
    Fields inner = fields.inner("outcomes");
    List<Outcome> outcomes =
        inner.ids().stream()
            .map(name -> new Outcome(name, inner.text(name), Optional.<Band>empty()))
            .toList();
    if (outcomes.size() < 2) {
      fields.problem(
          "outcomes",
          "too-few-outcomes",
          "a check needs at least two outcomes",
          "Name them from ordinary to telling.");
    }
    return outcomes;
  }

  /**
   * Reads the outcomes of a measured check with their bands.
   *
   * @param measures empty if it cannot be read; that problem has already been reported
   */
  private List<Outcome> bands(Optional<Measures> measures) {
    Fields inner = fields.inner("bands");
    List<Outcome> outcomes = new ArrayList<>();
    for (String name : inner.ids()) {
      Optional<Band> band =
          measures.flatMap(m -> inner.parsed(name, text -> BandText.parse(text, m)));
      outcomes.add(new Outcome(name, inner.text(name), band));
    }
    if (outcomes.size() < 2) {
      fields.problem(
          "bands",
          "too-few-outcomes",
          "a measured check needs at least two bands",
          "Name them from ordinary to telling.");
    } else if (!BandText.coverAll(outcomes)) {
      fields.problem("bands", "bands-do-not-meet", BandText.DO_NOT_MEET, BandText.MEET);
    }
    return List.copyOf(outcomes);
  }

  private Map<String, double[]> likelihood(List<Outcome> outcomes, double[] otherwise) {
    Map<String, double[]> likelihood = new LinkedHashMap<>();
    Fields inner = fields.inner("likelihood");
    for (String cause : inner.names()) {
      likelihood.put(cause, LikelihoodRow.read(inner, cause, outcomes, otherwise));
    }
    return likelihood;
  }
}
