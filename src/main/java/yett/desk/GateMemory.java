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
import yett.interview.site.SiteFacts;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/** Keeps what people said about a gate from one case to the next. */
public final class GateMemory {
  private static final JsonMapper JSON = JsonMapper.shared();

  /** Stored with the answers. It contains a blank, so that no card can have it as its id. */
  private static final String RETIRED = "retired on";

  /** The day to which the stored age of the batteries refers, because they age between visits. */
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
   * The answers about a gate that its questions still allow. Ages include the years that have
   * passed since; the temperature of the last visit is left out.
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

  /** The same today: ages include the years that have passed since they were told. */
  public Map<String, String> now(SiteRecord site) {
    return aged(body(site), today());
  }

  private static Map<String, String> answers(Map<String, String> body) {
    Map<String, String> answers = new LinkedHashMap<>(body);
    answers.keySet().removeAll(Set.of(RETIRED, AGE_TOLD_ON));
    return answers;
  }

  /** The answers on a later day: an age of one year has become two after a year. */
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

  /** The day since which a gate is no longer looked after; empty if it is looked after. */
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
   * Stores what was said about a gate if any of it is new. A retired gate stays retired.
   *
   * @return whether it could be stored; if not, it is still in the case
   */
  public boolean keep(String gate, Map<String, String> answers) {
    return keep(gate, answers, Optional.empty());
  }

  /**
   * The same after new batteries were fitted.
   *
   * @param batteries the day on which they were fitted, if nobody gave their age since
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

  /**
   * The answers with the day to which the batteries' age refers. If the age has only grown with
   * time, the stored age and day stay.
   */
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

  /** Marks a gate as no longer looked after from this day. */
  public void retire(String gate, LocalDate from) {
    save(gate, said(gate), Optional.of(from));
  }

  /** Marks a gate as looked after again. */
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
