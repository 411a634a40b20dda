package yett.wording;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.evidence.Conflict;
import yett.interview.evidence.Prospects;
import yett.interview.moment.Moment;
import yett.interview.moment.SetApart;
import yett.interview.site.SiteFacts;
import yett.interview.state.CaseState.Answered;
import yett.knowledge.Band;
import yett.knowledge.Check;
import yett.knowledge.Check.Outcome;
import yett.knowledge.Measures;
import yett.knowledge.Names;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.rules.Conclusion.Finding;
import yett.rules.Conclusion.FollowUp;

/** Names the things of a case in plain text. */
public final class Wording {
  /** How many characters are shown of an entry that cannot be put into words. */
  private static final int LONGEST = 200;

  private static final DateTimeFormatter DAY_AND_TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm").withZone(ZoneOffset.UTC);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm").withZone(ZoneOffset.UTC);

  private final RuleBase base;
  private final EventWords events = new EventWords(this);

  public Wording(RuleBase base) {
    this.base = base;
  }

  public static String dayAndTime(Instant at) {
    return DAY_AND_TIME.format(at) + " UTC";
  }

  public static String time(Instant at) {
    return TIME.format(at);
  }

  public static String aPerson(Role role) {
    return Names.article(role.word()) + role.word();
  }

  /** An id in words, with blanks. */
  public static String spaced(String id) {
    return id.replace('-', ' ');
  }

  /** The question of a check; its id if the rule base no longer has it. */
  public String ask(String check) {
    Check card = base.checks().get(check);
    return card == null ? spaced(check) : card.ask();
  }

  public String repair(String repair) {
    return base.repairs().containsKey(repair) ? base.repairs().get(repair).name() : spaced(repair);
  }

  /** What makes follow-up work necessary: a repair, or a recent event. */
  public String origin(FollowUp due) {
    return base.histories().containsKey(due.repair())
        ? history(due.repair())
        : repair(due.repair());
  }

  public String setUp(String setUp) {
    return base.setUps().containsKey(setUp) ? base.setUps().get(setUp).name() : spaced(setUp);
  }

  public String cause(String cause) {
    return base.causes().containsKey(cause) ? base.causes().get(cause).name() : spaced(cause);
  }

  public String stop(String stop) {
    return base.stops().containsKey(stop) ? base.stops().get(stop).name() : spaced(stop);
  }

  public String history(String history) {
    return base.histories().containsKey(history)
        ? base.histories().get(history).name()
        : spaced(history);
  }

  public String complaint(String complaint) {
    return base.checks().containsKey(complaint)
        ? base.checks().get(complaint).ask()
        : spaced(complaint);
  }

  /** An answer in the words of the card. */
  public String answer(String check, Answer answer) {
    Check card = base.checks().get(check);
    return answer.map(
        chosen -> together(answer.choices().stream().map(o -> outcome(card, o)).toList()),
        read ->
            card == null || card.measures().isEmpty()
                ? read.typed()
                : reading(card.measures().get(), read),
        () -> untold(answer, "could not tell"),
        () -> "put off");
  }

  /** That a question has no sense at this gate, or these words for what could not be told. */
  public static String untold(Answer answer, String untold) {
    return answer.senseless() ? "does not apply" : untold;
  }

  private static String outcome(Check check, String outcome) {
    int at = check == null ? -1 : check.indexOf(outcome);
    if (at < 0) {
      return spaced(outcome);
    }
    return check.measured() ? spaced(outcome) : check.outcomes().get(at).text();
  }

  /** A reading as it was taken, followed by what was typed if that looks different. */
  private static String reading(Measures measures, Answer.Read read) {
    String shown = measures.asRead(read.typed(), read.value());
    String typed = read.typed().strip();
    return typed.equals(shown) ? shown : shown + " (typed: " + typed + ")";
  }

  /** What a reading was taken to mean. Empty for an answer in words, which is its own meaning. */
  public Optional<String> meaning(Moment moment, Answered answered) {
    Check check = base.checks().get(answered.check());
    if (check == null || !check.measured()) {
      return Optional.empty();
    }
    Optional<Finding> finding = moment.judgement().finding(answered.event());
    if (answered.answer().reading().isPresent() && finding.isEmpty()) {
      return Optional.of("nothing: no usual range is known for this gate");
    }
    return finding.map(
        f -> spaced(f.outcome()) + " (" + limits(moment, check, f, answered.event()) + ")");
  }

  /** The limits between which a reading fell: in units, also where the card gives a share. */
  private static String limits(Moment moment, Check check, Finding finding, long event) {
    int outcome = check.indexOf(finding.outcome());
    Outcome there = check.outcomes().get(outcome);
    String range =
        there.band().filter(Band::relative).isEmpty()
            ? ""
            : Prospects.range(check, outcome, moment.judgement().expectation(check.id(), event));
    return range.isEmpty() ? there.text() : range;
  }

  /** The usual range on this gate by which a reading was judged. */
  public Optional<String> usual(Moment moment, Check check, long event) {
    if (!check.measured()) {
      return Optional.empty();
    }
    Measures measures = check.measures().get();
    return moment
        .judgement()
        .expectation(check.id(), event)
        .map(
            e ->
                UsualRangeWords.words(measures, e.low(), e.high())
                    + ", "
                    + measures.units().in(e.how()))
        .or(() -> Optional.of(check.outcomes().get(0)).filter(Wording::fixed).map(Outcome::text));
  }

  private static boolean fixed(Outcome outcome) {
    return outcome.band().isPresent() && !outcome.band().get().relative();
  }

  /**
   * An entry that is stored but not used, shown as stored, because the rule base may have no words
   * for it.
   */
  public static String apart(SetApart apart) {
    Entry entry = apart.entry();
    String text = EventText.write(entry.event());
    return "Entry "
        + entry.number()
        + ", "
        + dayAndTime(entry.at())
        + ": "
        + (text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text)
        + " ("
        + apart.why()
        + ")";
  }

  /** The answer to a site question in the card's words; unchanged if there is no such card. */
  public String site(String question, String answer) {
    SiteQuestion card = base.siteQuestions().get(question);
    return card == null ? answer : site(card, answer);
  }

  /** The answer to a site question in the card's words. */
  public static String site(SiteQuestion question, String answer) {
    return question.said(answer).replace('\u00a0', ' ');
  }

  /** Proofs that this gate needs and that have not passed since the last repair. */
  public List<Check> openProofs(Moment moment) {
    return new SiteFacts(base)
        .proofs(moment.state().told().site()).stream().filter(p -> !passed(moment, p)).toList();
  }

  private static boolean passed(Moment moment, Check proof) {
    return moment.state().answer(proof.id()).filter(a -> a.answer().is(Check.PASS)).isPresent();
  }

  /** What happened, in a few words. */
  public String event(Event event) {
    return event.accept(events);
  }

  /** Answers that can hardly all be right, in one or two sentences. */
  public String conflict(Conflict conflict) {
    String answers = conflict.parts().stream().map(this::part).collect(Collectors.joining("; "));
    return (conflict.parts().size() > 1
            ? "These answers hardly fit together: "
            : "This hardly fits what was known before: ")
        + answers
        + "."
        + (conflict.weighed() ? "" : " The last one is kept, but does not count.");
  }

  private String part(Conflict.Part part) {
    String asked = quoted(ask(part.check()));
    return part.event() == 0
        ? "reported " + asked
        : asked + " " + meaning(base.checks().get(part.check()), part.outcome(), part.also());
  }

  /** Ids of the checks that are asked only to find dangers. */
  public Set<String> dangers() {
    return base.ordinaryChecks().filter(Check::danger).map(Check::id).collect(Collectors.toSet());
  }

  /**
   * How a try of the gate went: "ran", or how it failed, with the complaints that remain and the
   * new ones.
   */
  public String tried(Event.Retested tried) {
    List<String> more = new ArrayList<>();
    if (!tried.left().isEmpty()) {
      more.add("left: " + asks(tried.left()));
    }
    if (!tried.anew().isEmpty()) {
      more.add("new: " + asks(tried.anew()));
    }
    return tried.words() + (more.isEmpty() ? "" : " (" + String.join("; ", more) + ")");
  }

  private String asks(List<String> complaints) {
    return complaints.stream().map(this::ask).collect(Collectors.joining(", "));
  }

  /** Whether the rule base has a check with this id. */
  public boolean isCheck(String id) {
    return base.checks().containsKey(id);
  }

  /** The name of a repair, or the question of a check. */
  public String card(String id) {
    return base.repairs().containsKey(id) ? repair(id) : ask(id);
  }

  public boolean isProof(String check) {
    Check card = base.checks().get(check);
    return card != null && card.kind() == Check.Kind.PROOF;
  }

  /** The instrument that a check needs, in words; empty if eyes suffice. */
  public static Optional<String> instrument(Check check) {
    return check
        .measures()
        .map(Measures::instrument)
        .filter(i -> !i.equals("eye"))
        .map(Wording::spaced);
  }

  public static String quoted(String words) {
    return "\"" + words + "\"";
  }

  /** The text with a capital, as at the beginning of a sentence. */
  public static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  /** The text with a small first letter, as within a sentence; an abbreviation stays. */
  public static String uncapital(String text) {
    boolean abbreviation = text.length() > 1 && Character.isUpperCase(text.charAt(1));
    return text.isEmpty() || abbreviation
        ? text
        : Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }

  /** Outcomes in words that are true at once; their texts may hold commas and "and" themselves. */
  static String together(List<String> texts) {
    return String.join(", and also ", texts);
  }

  /**
   * Outcomes in words.
   *
   * @param also others that are true at once, in the order of the card
   */
  public static String meaning(Check check, String outcome, List<String> also) {
    return together(
        Stream.concat(also.stream(), Stream.of(outcome)).map(o -> meaning(check, o)).toList());
  }

  /** A chosen answer in words, with all its outcomes. */
  public static String meaning(Check check, Answer.Chosen chosen) {
    return meaning(check, chosen.outcome(), chosen.also());
  }

  /**
   * An outcome in words: its text, or for a band its name, because the text of a band is a range.
   */
  public static String meaning(Check check, String outcome) {
    int index = check.indexOf(outcome);
    return check.measured() || index < 0 ? spaced(outcome) : check.outcomes().get(index).text();
  }
}
