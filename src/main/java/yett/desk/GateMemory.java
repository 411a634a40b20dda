package yett.desk;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tools.jackson.core.JacksonException;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;
import yett.casebook.Casebook;
import yett.casebook.CasebookException;
import yett.casebook.SiteRecord;
import yett.interview.SiteFacts;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/** What is known of a gate from one case to the next: only what somebody said of it. */
public final class GateMemory {
  private static final JsonMapper JSON = JsonMapper.shared();

  /** Beside the answers; no question is called so, as a name of a card has no blanks. */
  private static final String RETIRED = "retired on";

  /** The day on which the batteries were as old as was said: they age between visits. */
  private static final String AGE_TOLD_ON = "age of batteries told on";

  private static final String NEW = "0 years";

  private static final Pattern YEARS = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)( *years?)?");

  private final Casebook casebook;
  private final Clock clock;

  public GateMemory(Casebook casebook, Clock clock) {
    this.casebook = casebook;
    this.clock = clock;
  }

  /**
   * What is known of a gate, as far as the questions are still such as to have these answers, with
   * years that went by since; not how warm it was on the day of the last visit.
   */
  public Map<String, String> known(String gate, RuleBase base) {
    Map<String, String> known = new LinkedHashMap<>();
    casebook
        .site(casebook.nameNow(gate))
        .map(s -> aged(body(s), today()))
        .orElse(Map.of())
        .forEach(
            (id, answer) -> {
              SiteQuestion question = base.siteQuestions().get(id);
              boolean ofTheDay = id.equals(SiteQuestion.TEMPERATURE_TODAY);
              if (question != null && !ofTheDay && SiteFacts.canBe(question, answer)) {
                known.put(id, answer);
              }
            });
    return known;
  }

  /** What was said of a gate, by question. */
  public static Map<String, String> answers(SiteRecord site) {
    return answers(body(site));
  }

  private static Map<String, String> answers(Map<String, String> body) {
    Map<String, String> answers = new LinkedHashMap<>(body);
    answers.keySet().removeAll(Set.of(RETIRED, AGE_TOLD_ON));
    return answers;
  }

  /** The answers on a later day: what was a year old is two years old after one. */
  private static Map<String, String> aged(Map<String, String> body, LocalDate today) {
    Map<String, String> aged = answers(body);
    day(body.get(AGE_TOLD_ON))
        .ifPresent(
            day ->
                aged.computeIfPresent(
                    SiteQuestion.BATTERY_AGE, (q, answer) -> older(answer, day, today)));
    return aged;
  }

  private static String older(String answer, LocalDate day, LocalDate today) {
    Matcher years = YEARS.matcher(answer);
    long passed = Math.max(0, ChronoUnit.YEARS.between(day, today));
    return years.matches() && passed > 0
        ? new BigDecimal(years.group(1)).add(BigDecimal.valueOf(passed)).toPlainString() + " years"
        : answer;
  }

  private static Optional<LocalDate> day(String written) {
    try {
      return Optional.ofNullable(written).map(LocalDate::parse);
    } catch (DateTimeParseException e) {
      return Optional.empty(); // written by another program
    }
  }

  private LocalDate today() {
    return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
  }

  /** Since when a gate is not looked after any more; empty if it is. */
  public static Optional<LocalDate> retired(SiteRecord site) {
    return day(body(site).get(RETIRED));
  }

  private static Map<String, String> body(SiteRecord site) {
    try {
      return JSON.readValue(site.body(), new TypeReference<LinkedHashMap<String, String>>() {});
    } catch (JacksonException e) {
      return Map.of(); // written by another version: the questions are asked again
    }
  }

  /**
   * Keeps what was said of a gate, if it is news; one that is retired stays so.
   *
   * @return whether it could be kept; if not, it is in the case all the same
   */
  public boolean keep(String gate, Map<String, String> answers) {
    return keep(gate, answers, Optional.empty());
  }

  /**
   * The same where the batteries are new.
   *
   * @param batteries the day on which they were fitted, if nobody told their age since
   */
  public boolean keep(String gate, Map<String, String> answers, Optional<LocalDate> batteries) {
    try {
      Optional<SiteRecord> before = casebook.site(gate);
      Map<String, String> body = before.map(GateMemory::body).orElse(Map.of());
      if (before.isEmpty() || batteries.isPresent() || !aged(body, today()).equals(answers)) {
        Map<String, String> dated = dated(answers, body);
        batteries.ifPresent(
            day -> {
              dated.put(SiteQuestion.BATTERY_AGE, NEW);
              dated.put(AGE_TOLD_ON, day.toString());
            });
        save(gate, dated, before.flatMap(GateMemory::retired));
      }
      return true;
    } catch (CasebookException e) {
      return false;
    }
  }

  /** With the day of the batteries' age: where they only grew older it stays as it was told. */
  private Map<String, String> dated(Map<String, String> answers, Map<String, String> before) {
    Map<String, String> dated = new LinkedHashMap<>(answers);
    String age = answers.get(SiteQuestion.BATTERY_AGE);
    if (age == null) {
      return dated;
    }
    boolean same = age.equals(aged(before, today()).get(SiteQuestion.BATTERY_AGE));
    if (same && before.containsKey(AGE_TOLD_ON)) {
      dated.put(SiteQuestion.BATTERY_AGE, before.get(SiteQuestion.BATTERY_AGE));
      dated.put(AGE_TOLD_ON, before.get(AGE_TOLD_ON));
    } else {
      dated.put(AGE_TOLD_ON, today().toString());
    }
    return dated;
  }

  /** Says that a gate is not looked after any more from a day on. */
  public void retire(String gate, LocalDate from) {
    save(gate, said(gate), Optional.of(from));
  }

  /** Says that a gate is looked after again. */
  public void restore(String gate) {
    save(gate, said(gate), Optional.empty());
  }

  private Map<String, String> said(String gate) {
    Map<String, String> said =
        new LinkedHashMap<>(casebook.site(gate).map(GateMemory::body).orElse(Map.of()));
    said.remove(RETIRED);
    return said;
  }

  private void save(String gate, Map<String, String> said, Optional<LocalDate> retired) {
    Map<String, String> body = new LinkedHashMap<>(said);
    retired.ifPresent(day -> body.put(RETIRED, day.toString()));
    casebook.saveSite(new SiteRecord(gate, gate, JSON.writeValueAsString(body), clock.instant()));
  }
}
