package yett.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.knowledge.Check;
import yett.knowledge.Fields;
import yett.knowledge.Measures;
import yett.knowledge.Names;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.quantity.ReadingException;

/** Reads one case from its fields; each error is reported with its position. */
final class CaseReader {
  private static final String RETEST = "retest";

  /** Endings that only a caller can bring about, so a run never reaches them. */
  private static final Set<Ending> BY_CALLERS = EnumSet.of(Ending.CANCELLED, Ending.NOT_REACHED);

  private static final List<String> ENDS =
      Arrays.stream(Ending.values())
          .filter(e -> !BY_CALLERS.contains(e))
          .map(RunSummary::word)
          .toList();
  private static final String CURED = "cured";
  private static final String FAILS = "fails";
  static final String CANNOT_TELL = "cannot-tell";
  static final String DOES_NOT_APPLY = "does-not-apply";
  private static final String USUAL = "usual";
  private static final String SEVERAL = "several";
  private static final Map<String, Answer> NO_ANSWER =
      Map.of(
          CANNOT_TELL,
          new Answer.CannotTell(),
          DOES_NOT_APPLY,
          new Answer.DoesNotApply(),
          "not-now",
          new Answer.NotNow());

  private final RuleBase base;
  private final Set<String> complaints;
  private final Set<String> checks;

  CaseReader(RuleBase base) {
    this.base = base;
    this.complaints = base.complaints().stream().map(Check::id).collect(Collectors.toSet());
    this.checks = new LinkedHashSet<>(base.checks().keySet());
    this.checks.removeAll(complaints);
    this.checks.add(RETEST);
  }

  RecordedCase read(String file, Fields fields, List<RecordedCase> before) {
    String name = fields.text("case");
    if (before.stream().anyMatch(c -> c.name().equals(name)) && !name.isEmpty()) {
      fields.problem(
          "case", "duplicate-case", quoted(name) + " is in this file twice", "Rename one of them.");
    }
    String story = fields.text("story", "");
    String person =
        fields.has("person") ? fields.oneOf("person", "technician", Role.words()) : person(fields);
    Map<String, String> site = site(fields.inner("site"));
    List<String> said = known(fields, "complaints", complaints, "complaint");
    List<String> history = known(fields, "history", base.histories().keySet(), "history");
    Fields answers = fields.inner("answers");
    Map<String, RepeatedAnswer<Answer>> told = answers(answers);
    Optional<RepeatedAnswer<Event.Retested>> retests =
        answers.has(RETEST) ? turns(answers, RETEST, this::retest) : Optional.empty();
    String others = fields.oneOf("others", CANNOT_TELL, List.of(CANNOT_TELL, USUAL));
    Set<String> causes = base.causes().keySet();
    Optional<List<String>> truth = optional(fields, "truth", causes, "cause");
    List<String> roots = roots(fields, truth.orElse(List.of()));
    Optional<List<String>> repairs = optional(fields, "repairs", base.repairs().keySet(), "repair");
    Optional<String> expect = one(fields, "expect", causes, "cause");
    Optional<String> stop = one(fields, "stop", base.stops().keySet(), "stop");
    boolean misleads = fields.flag("misleads");
    boolean keptAside = fields.flag("kept-aside");
    boolean blind = fields.flag("blind");
    RecordedCase.Call call = call(fields, told.keySet());
    fields.finish();
    return new RecordedCase(
        file,
        name,
        story,
        Role.named(person),
        site,
        said,
        history,
        told,
        others.equals(USUAL),
        retests,
        truth,
        roots,
        repairs,
        expect,
        stop,
        misleads,
        keptAside,
        blind,
        call);
  }

  /** The true causes that no other true cause brought about. */
  private List<String> roots(Fields fields, List<String> truth) {
    return fields.has("roots") ? known(fields, "roots", truth, "true cause") : truth;
  }

  private RecordedCase.Call call(Fields fields, Set<String> answered) {
    List<String> parts =
        base.repairs().values().stream()
            .flatMap(r -> r.parts().stream())
            .map(Repair.Part::part)
            .toList();
    String ends = fields.has("ends") ? fields.oneOf("ends", ENDS.get(0), ENDS) : "";
    return new RecordedCase.Call(
        fields.has("said") ? Optional.of(fields.text("said")) : Optional.empty(),
        known(fields, "told", answered, "answer"),
        known(fields, "pressing", base.telephone().pressing().keySet(), "pressing"),
        ends.isEmpty() ? Optional.empty() : Optional.of(ends),
        fields.has("parts")
            ? Optional.of(known(fields, "parts", parts, "part"))
            : Optional.empty());
  }

  /** Reports that the role is missing. */
  private static String person(Fields fields) {
    fields.text("person");
    return Role.TECHNICIAN.word();
  }

  private Optional<List<String>> optional(
      Fields fields, String field, Set<String> known, String what) {
    return fields.has(field) ? Optional.of(known(fields, field, known, what)) : Optional.empty();
  }

  private Optional<String> one(Fields fields, String field, Set<String> known, String what) {
    if (!fields.has(field)) {
      return Optional.empty();
    }
    String name = fields.text(field);
    unknown(fields, field, name, known, what);
    return Optional.of(name);
  }

  private List<String> known(Fields fields, String field, Collection<String> known, String what) {
    List<String> names = fields.texts(field);
    boolean list = fields.get(field).isArray();
    for (int i = 0; i < names.size(); i++) {
      unknown(fields, list ? field + "/" + i : field, names.get(i), known, what);
    }
    return names;
  }

  private void unknown(
      Fields fields, String place, String name, Collection<String> known, String what) {
    if (!known.contains(name)) {
      fields.problem(
          place,
          "unknown-" + what.replace(' ', '-'),
          "there is no " + what + " " + quoted(name),
          base.switchedOff(name)
              ? "An add-on has switched it off, or all that it was for."
              : Names.advice(name, known));
    }
  }

  private Map<String, String> site(Fields fields) {
    Map<String, String> site = new LinkedHashMap<>();
    for (String id : fields.names()) {
      SiteQuestion question = base.siteQuestions().get(id);
      if (question == null) {
        unknown(fields, id, id, base.siteQuestions().keySet(), "site question");
      } else if (isText(fields, id)) {
        String answer = fields.text(id, "");
        if (question.measures().isPresent()) {
          reading(fields, id, id, answer, question.measures().get());
        } else {
          oneOf(new Slot(fields, id, answer), id, "answer to", question.choices().keySet());
        }
        site.put(id, answer);
      }
    }
    return site;
  }

  private Map<String, RepeatedAnswer<Answer>> answers(Fields fields) {
    Map<String, RepeatedAnswer<Answer>> told = new LinkedHashMap<>();
    for (String id : fields.names()) {
      if (complaints.contains(id)) {
        fields.problem(
            id,
            "misplaced-complaint",
            quoted(id) + " is a complaint, not a check",
            "Add it to the list \"complaints\".");
      } else if (!checks.contains(id)) {
        unknown(fields, id, id, checks, "check");
      } else if (!id.equals(RETEST)) {
        Check check = base.checks().get(id);
        answers(fields, id, check).ifPresent(t -> told.put(id, t));
      }
    }
    return told;
  }

  /** The answer to a check, or a list of them; each may be a mapping of several outcomes. */
  private Optional<RepeatedAnswer<Answer>> answers(Fields fields, String id, Check check) {
    JsonNode value = fields.get(id);
    boolean mapped = value.isObject();
    for (int i = 0; value.isArray() && i < value.size(); i++) {
      mapped |= value.get(i).isObject();
    }
    if (!mapped) {
      return turns(fields, id, slot -> answer(slot, check));
    }
    if (value.isObject()) {
      return several(fields, id, value, check).map(RepeatedAnswer::always);
    }
    List<Answer> turns = new ArrayList<>();
    for (int i = 0; i < value.size(); i++) {
      String place = id + "/" + i;
      JsonNode one = value.get(i);
      (one.isObject()
              ? several(fields, place, one, check)
              : answer(new Slot(fields, place, one.asString("").strip()), check))
          .ifPresent(turns::add);
    }
    return turns.isEmpty() ? Optional.empty() : Optional.of(new RepeatedAnswer<>(turns, true));
  }

  /** Reads {@code {several: [scrape, bang]}}. */
  private static Optional<Answer> several(
      Fields fields, String place, JsonNode value, Check check) {
    List<String> outcomes = new ArrayList<>();
    value.path(SEVERAL).forEach(o -> outcomes.add(o.asString("").strip()));
    if (value.size() != 1 || outcomes.isEmpty()) {
      fields.problem(
          place,
          "not-text",
          quoted(check.id()) + " should be one answer, found " + Fields.shown(value),
          "Write a name, a reading with its unit, or {several: [one, another]}.");
      return Optional.empty();
    }
    List<String> known = check.outcomes().stream().map(Check.Outcome::id).toList();
    for (String outcome : outcomes) {
      if (!known.contains(outcome)) {
        oneOf(new Slot(fields, place, outcome), check.id(), "outcome of", known);
        return Optional.empty();
      }
    }
    if (!Answer.Chosen.canBe(check, outcomes)) {
      fields.problem(
          place,
          "not-at-once",
          String.join(" and ", outcomes) + " cannot be told at once of " + quoted(check.id()),
          check.several()
              ? "The first outcome of the card goes with no other, and each is named once."
              : "Its card does not say \"several: true\".");
      return Optional.empty();
    }
    return Optional.of(Answer.Chosen.of(check, outcomes));
  }

  /** A value with its position. */
  private record Slot(Fields fields, String place, String text) {}

  private static void oneOf(Slot slot, String id, String what, Collection<String> known) {
    if (!known.contains(slot.text())) {
      slot.fields()
          .problem(
              slot.place(),
              "unknown-outcome",
              quoted(slot.text()) + " is not " + Names.article(what) + what + " \"" + id + "\"",
              Names.advice(slot.text(), known));
    }
  }

  private <T> Optional<RepeatedAnswer<T>> turns(
      Fields fields, String id, Function<Slot, Optional<T>> reader) {
    JsonNode value = fields.get(id);
    if (!value.isArray()) {
      return isText(fields, id)
          ? reader.apply(new Slot(fields, id, fields.text(id, ""))).map(RepeatedAnswer::always)
          : Optional.empty();
    }
    if (value.isEmpty()) {
      fields.problem(
          id, "no-answer", quoted(id) + " has no answer", "Give one, or leave the line out.");
      return Optional.empty();
    }
    List<T> turns = new ArrayList<>();
    List<String> texts = fields.texts(id);
    for (int i = 0; i < texts.size(); i++) {
      reader.apply(new Slot(fields, id + "/" + i, texts.get(i))).ifPresent(turns::add);
    }
    return Optional.of(new RepeatedAnswer<>(turns, true));
  }

  private static boolean isText(Fields fields, String id) {
    if (!fields.has(id)) {
      fields.problem(
          id, "no-answer", quoted(id) + " has no answer", "Give one, or leave the line out.");
      return false;
    }
    JsonNode value = fields.get(id);
    if (value.isArray() || value.isObject()) {
      fields.problem(
          id,
          "not-text",
          quoted(id) + " should be one answer, found " + Fields.shown(value),
          "Write a name, or a reading with its unit.");
      return false;
    }
    return true;
  }

  /** Parses {@code cured}, {@code fails}, or {@code left} and complaints separated by commas. */
  private Optional<Event.Retested> retest(Slot slot) {
    String[] parts = slot.text().replaceFirst("^left ", "").split(",");
    List<String> words = Arrays.stream(parts).map(String::trim).toList();
    if (slot.text().startsWith("left ") && complaints.containsAll(words)) {
      return Optional.of(Event.Retested.left(words, List.of()));
    }
    oneOf(slot, RETEST, "answer to", List.of(CURED, FAILS));
    return Optional.of(new Event.Retested(slot.text().equals(CURED)));
  }

  private Optional<Answer> answer(Slot slot, Check check) {
    String text = slot.text();
    if (check.indexOf(text) >= 0) {
      return Optional.of(new Answer.Chosen(text));
    }
    Answer none = NO_ANSWER.get(text.toLowerCase(Locale.ROOT).replace(' ', '-'));
    if (none != null) {
      return Optional.of(none);
    }
    if (check.measured()) {
      return reading(slot.fields(), slot.place(), check.id(), text, check.measures().get());
    }
    List<String> outcomes = check.outcomes().stream().map(Check.Outcome::id).toList();
    slot.fields()
        .problem(
            slot.place(),
            "unknown-outcome",
            quoted(text) + " is not an outcome of \"" + check.id() + "\"",
            Names.advice(text, outcomes));
    return Optional.empty();
  }

  private static Optional<Answer> reading(
      Fields fields, String place, String id, String text, Measures measures) {
    try {
      double value = measures.parse(text);
      if (!measures.possible(value)) {
        fields.problem(
            place,
            "impossible-reading",
            quoted(text) + " is not possible for \"" + id + "\"",
            "Possible: "
                + measures.show(measures.least())
                + " to "
                + measures.show(measures.most())
                + ".");
        return Optional.empty();
      }
      return Optional.of(new Answer.Read(text, value));
    } catch (ReadingException e) {
      fields.problem(
          place,
          "bad-reading",
          quoted(text) + " is not a reading for \"" + id + "\"",
          e.getMessage());
      return Optional.empty();
    }
  }

  private static String quoted(String text) {
    return "\"" + text + "\"";
  }
}
