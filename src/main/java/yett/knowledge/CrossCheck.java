package yett.knowledge;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Finds problems between cards, once all are read: unknown names, loops, gaps. */
final class CrossCheck {
  private final RuleBase base;
  private final RuleBaseReader.Places places;
  private final List<Problem> problems;
  private final Set<String> followers = new LinkedHashSet<>();
  private final Set<String> proofs = new TreeSet<>();
  private final Set<String> cautioned = new TreeSet<>();
  private final Set<String> repaired = new HashSet<>();

  CrossCheck(RuleBase base, RuleBaseReader.Places places, List<Problem> problems) {
    this.base = base;
    this.places = places;
    this.problems = problems;
    followers.addAll(base.repairs().keySet());
    followers.addAll(base.checks().keySet());
    base.proofs().forEach(p -> proofs.add(p.id()));
    base.cautions().values().forEach(c -> cautioned.add(c.hazard()));
    base.cautions().values().forEach(c -> conditions("caution", c.id(), c.onlyIf()));
    base.repairs().values().forEach(r -> repaired.addAll(r.removes().keySet()));
  }

  void run() {
    base.causes().values().forEach(this::cause);
    base.checks().values().forEach(this::check);
    base.histories()
        .values()
        .forEach(h -> known("history", h.id(), "odds", h.odds().keySet(), base.causes().keySet()));
    base.histories().values().forEach(h -> conditions("history", h.id(), h.onlyIf()));
    base.repairs().values().forEach(this::repair);
    CallersSteps.check(base.repairs().values(), places);
    base.setUps().values().forEach(this::setUp);
    base.mainsParts()
        .keySet()
        .forEach(
            id -> {
              if (base.repairs().containsKey(id)) {
                checkMainsOff("repair", id, base.repairs().get(id).needs());
              } else {
                checkMainsOff("check", id, base.checks().get(id).needs());
              }
            });
    base.siteQuestions().values().forEach(this::question);
    Set<String> complaints = new TreeSet<>();
    base.complaints().forEach(c -> complaints.add(c.id()));
    base.telephone()
        .pressing()
        .values()
        .forEach(p -> known("pressing", p.id(), "if-said", p.ifSaid(), complaints));
    Set<String> looks = new TreeSet<>();
    base.checks().values().stream()
        .filter(c -> c.kind() == Check.Kind.CHECK && c.who() == Role.CALLER)
        .forEach(c -> looks.add(c.id()));
    base.telephone()
        .lookFirst()
        .forEach((id, check) -> known("complaint", id, "look-first", List.of(check), looks));
    base.telephone()
        .lookNext()
        .forEach((id, check) -> known("check", id, "look-next", List.of(check), looks));
    if (problems.isEmpty()) { // else it may follow from an unreadable danger
      base.telephone()
          .spoken()
          .tellsOf()
          .forEach((kind, cards) -> cards.forEach((id, dangers) -> tellsOf(kind, id, dangers)));
    }
    for (String special : List.of(Cause.NOTHING_WRONG, Cause.NOT_IN_RULE_BASE)) {
      if (!base.causes().containsKey(special)) {
        problems.add(
            new Problem(
                "missing-cause",
                "(rule base)",
                0,
                0,
                "the cause \"" + special + "\" is missing",
                "Every rule base has it, so that the tool can say that it does not know. A folder"
                    + " of cards on top of the program's begins with a file "
                    + AddOn.FILE
                    + "."));
      }
    }
  }

  private void cause(Cause cause) {
    known(
        "cause", cause.id(), "consequences", cause.consequences().keySet(), base.causes().keySet());
    conditions("cause", cause.id(), cause.onlyIf());
    if (reaches(cause.id(), cause.id())) {
      problem(
          "cause",
          cause.id(),
          "consequences",
          "links-loop",
          "\"" + cause.id() + "\" brings itself about through its links",
          "Take out the link that is least true.");
    }
    if (!cause.id().equals(Cause.NOT_IN_RULE_BASE) && !repaired.contains(cause.id())) {
      problem(
          "cause",
          cause.id(),
          "",
          "no-repair",
          "no repair removes \"" + cause.id() + "\"",
          "Add the cause to \"removes\" of a repair, or write a repair card.");
    }
  }

  private boolean reaches(String from, String target) {
    Deque<String> open = new ArrayDeque<>(consequences(from));
    Set<String> seen = new HashSet<>();
    while (!open.isEmpty()) {
      String next = open.pop();
      if (next.equals(target)) {
        return true;
      }
      if (seen.add(next)) {
        open.addAll(consequences(next));
      }
    }
    return false;
  }

  private Collection<String> consequences(String id) {
    Cause cause = base.causes().get(id);
    return cause == null ? List.of() : cause.consequences().keySet();
  }

  /** Checks that an answer about a danger has consequences in the rules. */
  private void danger(Check check) {
    Set<String> dangers = new LinkedHashSet<>();
    check.outcomes().stream().skip(1).forEach(o -> dangers.add(o.id()));
    List<Set<String>> stops =
        RuleText.of(base.rules().values()).stream()
            .filter(RuleText::endsTheWork)
            .map(RuleText::conditions)
            .filter(names -> names.contains(check.id()))
            .toList();
    for (String danger : dangers) {
      boolean stopped =
          stops.stream()
              .anyMatch(
                  names -> names.contains(danger) || names.stream().noneMatch(dangers::contains));
      if (!stopped) {
        problem(
            "check",
            check.id(),
            "danger",
            "no-stop-rule",
            "no rule stops the work when \"" + check.id() + "\" is \"" + danger + "\"",
            "Write a rule (.drl) that concludes StopNow from it, or leave out \"danger\".");
      }
    }
  }

  private void check(Check check) {
    if (check.danger() && !base.rules().isEmpty()) { // cards may be written before any rule
      danger(check);
    }
    String kind = check.kind().name().toLowerCase(java.util.Locale.ROOT);
    known(kind, check.id(), "likelihood", check.likelihood().keySet(), base.causes().keySet());
    known(kind, check.id(), "needs", check.needs(), base.setUps().keySet());
    hazards(kind, check.id(), check.hazards());
    conditions(kind, check.id(), check.onlyIf());
    check
        .repeats()
        .ifPresent(
            r -> {
              known(kind, check.id(), "repeats", List.of(r.check()), base.checks().keySet());
              Check original = base.checks().get(r.check());
              if (original != null && original.repeats().isPresent()) {
                problem(
                    kind,
                    check.id(),
                    "repeats",
                    "repeats-a-repetition",
                    "\""
                        + check.id()
                        + "\" repeats \""
                        + original.id()
                        + "\", which repeats another check itself",
                    "Let both repeat \"" + original.repeats().get().check() + "\".");
              }
            });
    check.columns().ifPresent(columns -> checkColumns(kind, check, columns));
    checkAllowed(kind, check.id(), check.who(), check.needs());
    checkPossibleTogether(kind, check.id(), check.needs());
    checkCovers(kind, check.id(), check.needs());
    check.place().ifPresent(place -> checkPlace(kind, check, place));
  }

  /** Checks that the look which two columns answer has an outcome for each of them. */
  private void checkColumns(String kind, Check check, Columns columns) {
    columns
        .tells()
        .ifPresent(
            tells -> {
              known(kind, check.id(), "columns", List.of(tells), base.checks().keySet());
              Check look = base.checks().get(tells);
              boolean fits =
                  look == null
                      || !look.measured()
                          && columns.names().stream().allMatch(name -> look.indexOf(name) > 0);
              if (!fits) {
                problem(
                    kind,
                    check.id(),
                    "columns",
                    "two-columns",
                    "\"" + tells + "\" has no outcome for each of the columns",
                    "Name a look with the outcomes "
                        + String.join(" and ", columns.names())
                        + ", or leave out \"tells\".");
              }
            });
  }

  /** Checks that a look needs no other set-ups than its place. */
  private void checkPlace(String kind, Check check, Place place) {
    for (String need : check.needs()) {
      SetUp setUp = base.setUps().get(need);
      if (setUp != null && !setUp.isCondition() && !place.needs().contains(need)) {
        problem(
            kind,
            check.id(),
            "place",
            "not-there",
            "it needs \"" + need + "\", which is not in force at \"" + place.id() + "\"",
            "Take a place that needs it too, or leave out \"place\".");
      }
    }
  }

  private void repair(Repair repair) {
    known("repair", repair.id(), "removes", repair.removes().keySet(), base.causes().keySet());
    known("repair", repair.id(), "needs", repair.needs(), base.setUps().keySet());
    known("repair", repair.id(), "measure-first", repair.measureFirst(), base.checks().keySet());
    known("repair", repair.id(), "entails", repair.entails(), followers);
    known("repair", repair.id(), "proofs", repair.proofs(), proofs);
    known("repair", repair.id(), "puts-right", repair.putsRight(), proofs);
    hazards("repair", repair.id(), repair.hazards());
    conditions("repair", repair.id(), repair.onlyIf());
    checkAllowed("repair", repair.id(), repair.who(), repair.needs());
    checkPossibleTogether("repair", repair.id(), repair.needs());
    checkCovers("repair", repair.id(), repair.needs());
  }

  private void question(SiteQuestion question) {
    String id = question.id();
    conditions("site", id, question.onlyIf());
    known("site", id, "zero-after", question.zeroAfter(), base.repairs().keySet());
    Set<String> others = new TreeSet<>();
    base.siteQuestions().values().stream()
        .filter(q -> !q.id().equals(id) && q.follows().isEmpty())
        .filter(q -> q.measures().isPresent() && question.measures().isPresent())
        .filter(q -> q.measures().get().quantity() == question.measures().get().quantity())
        .forEach(q -> others.add(q.id()));
    known("site", id, "follows", question.follows().stream().toList(), others);
  }

  private void setUp(SetUp setUp) {
    known("set-up", setUp.id(), "excludes", setUp.excludes(), base.setUps().keySet());
    known("set-up", setUp.id(), "within", setUp.within(), base.setUps().keySet());
    checkAllowed("set-up", setUp.id(), setUp.who(), setUp.within());
    checkPossibleTogether("set-up", setUp.id(), base.withOuter(List.of(setUp.id())));
    if (base.withOuter(setUp.within()).contains(setUp.id())) {
      problem(
          "set-up",
          setUp.id(),
          "within",
          "links-loop",
          "it would have to be entered before itself",
          "Take away the line on the set-up that is entered first.");
    }
    checkUndone(setUp);
    hazards("set-up", setUp.id(), setUp.hazards());
  }

  /** Checks that leaving a set-up undoes what entering it did, and nothing else. */
  private void checkUndone(SetUp setUp) {
    boolean entered = !setUp.enter().isEmpty();
    if (entered == setUp.leave().isEmpty()) {
      problem(
          "set-up",
          setUp.id(),
          entered ? "enter" : "leave",
          "not-restored",
          entered
              ? "nothing restores what is done on the way in"
              : "there are steps on the way out, and none on the way in",
          "Add \"" + (entered ? "leave" : "enter") + "\": the steps, in their order.");
    }
  }

  /** Checks that whoever may do a step may also enter the set-ups that it needs. */
  private void checkAllowed(String kind, String id, Role who, List<String> needs) {
    for (String need : base.withOuter(needs)) {
      SetUp setUp = base.setUps().get(need);
      if (setUp != null && !who.may(setUp.who())) {
        problem(
            kind,
            id,
            "who",
            "nobody-may",
            "a "
                + who.word()
                + " may do this but may not enter the set-up \""
                + need
                + "\" that it needs",
            "Reserve the card for a " + setUp.who().word() + ".");
      }
    }
  }

  /**
   * Checks that work on mains parts needs them dead, because a firm may leave it to a technician.
   */
  private void checkMainsOff(String kind, String id, List<String> needs) {
    if (!base.withOuter(needs).contains(SetUp.LOCKED_OFF)) {
      problem(
          kind,
          id,
          "mains-part",
          "live-mains-part",
          "work on a mains part is done locked off and proved dead",
          "Add \"" + SetUp.LOCKED_OFF + "\" to \"needs\", or leave out \"mains-part\".");
    }
  }

  /** Checks that a card for a running gate says whether its covers are on. */
  private void checkCovers(String kind, String id, List<String> needs) {
    SetUp covers = base.setUps().get(SetUp.COVERS_ON);
    boolean runs = needs.contains(SetUp.GATE_RUNNING) || needs.contains(SetUp.ABLE_TO_RUN);
    if (runs
        && covers != null
        && !needs.contains(covers.id())
        && needs.stream().noneMatch(covers.excludes()::contains)) {
      problem(
          kind,
          id,
          "needs",
          "cover-not-said",
          "the gate is run, and nothing says whether its cover is on",
          "Add \"" + covers.id() + "\", or the set-up in which the cover is off.");
    }
  }

  /** Checks that the set-ups that a card needs are possible at the same time. */
  private void checkPossibleTogether(String kind, String id, List<String> named) {
    List<String> needs = base.withOuter(named);
    for (String need : needs) {
      SetUp setUp = base.setUps().get(need);
      for (String other : setUp == null ? List.<String>of() : setUp.excludes()) {
        if (needs.contains(other)) {
          problem(
              kind,
              id,
              "needs",
              "needs-exclude",
              "\"" + need + "\" excludes \"" + other + "\", and both are needed",
              "Keep the one in which the work is done.");
        }
      }
    }
  }

  private void hazards(String kind, String id, List<String> hazards) {
    for (String hazard : hazards) {
      if (!cautioned.contains(hazard)) {
        problem(
            kind,
            id,
            "hazards/" + hazard,
            "no-caution",
            "the hazard \"" + hazard + "\" has no caution",
            Names.advice(hazard, cautioned));
      }
    }
  }

  private void conditions(String kind, String id, Map<String, List<String>> onlyIf) {
    known(kind, id, "only-if", onlyIf.keySet(), base.siteQuestions().keySet());
    onlyIf.forEach(
        (question, answers) -> {
          SiteQuestion site = base.siteQuestions().get(question);
          if (site != null && !site.choices().isEmpty()) {
            known(kind, id, "only-if/" + question, answers, site.choices().keySet());
          }
        });
  }

  /**
   * Checks the dangers that a complaint refers to: each names an outcome of a danger that is not
   * the ordinary one.
   *
   * @param dangers check to outcome
   */
  private void tellsOf(String kind, String id, Map<String, String> dangers) {
    Set<String> checks = new TreeSet<>();
    base.checks().values().stream().filter(Check::danger).forEach(c -> checks.add(c.id()));
    known(kind, id, "tells-of", dangers.keySet(), checks);
    dangers.forEach(
        (check, outcome) -> {
          if (checks.contains(check)) {
            List<String> outcomes =
                base.checks().get(check).outcomes().stream().skip(1).map(o -> o.id()).toList();
            known(kind, id, "tells-of/" + check, List.of(outcome), outcomes);
          }
        });
  }

  private void known(
      String kind, String id, String field, Collection<String> names, Collection<String> known) {
    for (String name : names) {
      if (problems.size() > RuleBaseReader.MOST_PROBLEMS) {
        return;
      }
      if (!known.contains(name) && !name.isEmpty()) { // an empty one is already reported
        problem(
            kind,
            id,
            field + "/" + name,
            "unknown-name",
            "\"" + name + "\" in \"" + field + "\" is not known",
            Names.advice(name, known));
      }
    }
  }

  private void problem(
      String kind, String id, String field, String problem, String message, String advice) {
    places.of(kind, id).problem(field, problem, message, advice);
  }
}
