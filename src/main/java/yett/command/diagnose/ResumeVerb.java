package yett.command.diagnose;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.springframework.shell.core.command.CommandContext;
import org.springframework.shell.core.command.ExitStatus;
import yett.casebook.CaseId;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.command.common.UsageException;
import yett.command.common.Verb;
import yett.command.common.Workplace;
import yett.console.Block;
import yett.console.SignalWord;
import yett.desk.OpenCase;
import yett.interview.Event;
import yett.interview.Interview;
import yett.knowledge.Role;
import yett.wording.Figures;

/** {@code resume}: goes on with a case where it was left. */
public final class ResumeVerb extends Verb {
  private final Workplace place;

  public ResumeVerb(Workplace place) {
    super(
        "resume",
        "go on with a case where it was left",
        "Usage: resume [CASE] [--as caller|trainee|technician|electrician]. CASE is its number, "
            + "such as 2026-0007 or 7; without it, the case that was left last.",
        value("as", "who answers from now on; the same person as before if it is not said"));
    this.place = place;
  }

  @Override
  public ExitStatus execute(CommandContext context) {
    place.desk().prepare();
    CaseId id = id(words(context));
    Optional<Role> role =
        has(context, "as")
            ? Optional.of(DiagnoseVerb.role(option(context, "as", "")))
            : Optional.empty();
    try (OpenCase open = place.desk().open(id, role)) {
      open.nameIt(); // a program that was killed may have stored an answer and not said so
      var state = open.moment().state();
      String gate = state.opened().map(Event.Opened::site).orElse("");
      place.console().show(Block.heading("Case " + id + " · " + gate));
      if (state.closed().isPresent()) {
        place
            .console()
            .show(
                Block.paragraph(
                    "This case is closed: "
                        + state.closed().get().words()
                        + ". Its record: record "
                        + id
                        + "."));
        return OK;
      }
      boolean sameRules =
          state
              .opened()
              .map(o -> o.ruleBase().equals(place.desk().expertise().base().fingerprint()))
              .orElse(true);
      if (!sameRules) {
        place
            .console()
            .show(Block.paragraph("The rule base has changed since; the answers are judged anew."));
      }
      place.tellClock();
      place.console().show(new UnusableEvents(place.desk().base()).blocks(open.moment()));
      place.console().show(Block.paragraph(summary(open)));
      if (open.role() != Role.CALLER) {
        told(open);
      }
      new Conversation(place.console(), open, Map.of()).run();
    }
    return OK;
  }

  /** What came by telephone, and that danger is looked for again by whoever is there. */
  private void told(OpenCase open) {
    Corrections corrections = new Corrections(new Sitting(place.console(), open));
    List<String> told =
        open.moment().state().answers().stream()
            .filter(a -> a.by() == Role.CALLER && !a.yieldsTo(Role.TECHNICIAN))
            .filter(a -> place.desk().expertise().base().checks().containsKey(a.check()))
            .map(a -> corrections.told(a) + worth(a.check()))
            .toList();
    if (!told.isEmpty()) {
      place
          .console()
          .show(
              Block.heading("Told on the telephone"),
              Block.numbered(told),
              Block.signal(
                  SignalWord.WARNING,
                  "This was said from afar, and some time ago. Look for each danger of the list"
                      + " again before you touch anything; \"danger\" goes through them,"
                      + " \"correct\" changes what was told."));
    }
  }

  /** How far an answer from the telephone is taken to be right, so that it can be checked again. */
  private String worth(String check) {
    Double right =
        place.desk().expertise().base().checks().get(check).reliability().get(Role.CALLER);
    return right == null ? "" : " · callers see this right in " + Figures.percent(right);
  }

  private String summary(OpenCase open) {
    int answers = open.moment().state().answers().size();
    var leading = Interview.ranking(open.moment(), place.desk().expertise().base()).get(0);
    return answers
        + (answers == 1 ? " answer" : " answers")
        + " so far; most probable: "
        + leading.cause().name().toLowerCase(Locale.ROOT)
        + ", "
        + Figures.percent(leading.chance())
        + ".";
  }

  private CaseId id(List<String> words) {
    if (!words.isEmpty()) {
      return place.desk().casebook().find(words.get(0));
    }
    return place.desk().casebook().cases(CaseStatus.OPEN).stream()
        .findFirst() // the one written to last
        .map(CaseSummary::id)
        .orElseThrow(() -> new UsageException("No case is open. Begin one with: diagnose."));
  }
}
