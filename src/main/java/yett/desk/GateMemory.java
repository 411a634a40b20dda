package yett.desk;

import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
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

  private final Casebook casebook;
  private final Clock clock;

  public GateMemory(Casebook casebook, Clock clock) {
    this.casebook = casebook;
    this.clock = clock;
  }

  /**
   * What is known of a gate, as far as the questions are still such as to have these answers; not
   * how warm it was on the day of the last visit.
   */
  public Map<String, String> known(String gate, RuleBase base) {
    Map<String, String> known = new LinkedHashMap<>();
    casebook
        .site(casebook.nameNow(gate))
        .map(GateMemory::answers)
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
    Map<String, String> answers = new LinkedHashMap<>(body(site));
    answers.remove(RETIRED);
    return answers;
  }

  /** Since when a gate is not looked after any more; empty if it is. */
  public static Optional<LocalDate> retired(SiteRecord site) {
    try {
      return Optional.ofNullable(body(site).get(RETIRED)).map(LocalDate::parse);
    } catch (DateTimeParseException e) {
      return Optional.empty(); // written by another program: it is looked after
    }
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
    try {
      Optional<SiteRecord> before = casebook.site(gate);
      if (before.map(GateMemory::answers).filter(answers::equals).isEmpty()) {
        save(gate, answers, before.flatMap(GateMemory::retired));
      }
      return true;
    } catch (CasebookException e) {
      return false;
    }
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
    return casebook.site(gate).map(GateMemory::answers).orElse(Map.of());
  }

  private void save(String gate, Map<String, String> answers, Optional<LocalDate> retired) {
    Map<String, String> body = new LinkedHashMap<>(answers);
    retired.ifPresent(day -> body.put(RETIRED, day.toString()));
    casebook.saveSite(new SiteRecord(gate, gate, JSON.writeValueAsString(body), clock.instant()));
  }
}
