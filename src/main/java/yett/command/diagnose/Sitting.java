package yett.command.diagnose;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import yett.command.common.Prompt;
import yett.console.Block;
import yett.console.Console;
import yett.console.Text;
import yett.desk.OpenCase;
import yett.interview.Answer;
import yett.interview.Event;
import yett.interview.Interview;
import yett.interview.Moment;
import yett.interview.SetApart;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.wording.Figures;
import yett.wording.Wording;

/** A person at a console with a case on the table: what every part of a conversation works with. */
public final class Sitting {
  private static final int ROOM_TO_TYPE = 12;

  private final Console console;
  private final OpenCase open;
  private final StepViews views;
  private final ReasonViews reasons;
  private final Sharing sharing;

  public Sitting(Console console, OpenCase open) {
    this.console = console;
    this.open = open;
    this.views = new StepViews(base());
    this.reasons = new ReasonViews(base(), views);
    this.sharing = new Sharing(this);
  }

  public RuleBase base() {
    return open.interview().expertise().base();
  }

  public OpenCase open() {
    return open;
  }

  public Moment moment() {
    return open.moment();
  }

  public StepViews views() {
    return views;
  }

  public ReasonViews reasons() {
    return reasons;
  }

  public void show(Block... blocks) {
    console.show(blocks);
  }

  public void show(List<Block> blocks) {
    console.show(blocks);
  }

  public void say(String sentence) {
    console.show(Block.paragraph(sentence));
  }

  /** A line; "save" is understood at every prompt, also at those inside another. */
  public String line(String prompt) {
    String shown = prompt + "> ";
    if (shown.length() + ROOM_TO_TYPE > console.width()) {
      console.show(Block.paragraph(prompt + ":"));
      shown = "> ";
    }
    return Prompt.withLeave(console).line(shown, List.of()).orElseThrow(PutAside::new);
  }

  /** Asks until a line can be read. */
  public <T> T until(String prompt, Function<String, Prompt.Reading<T>> reader) {
    while (true) {
      Prompt.Reading<T> reading = reader.apply(line(prompt));
      if (reading.value().isPresent()) {
        return reading.value().get();
      }
      say(reading.complaint());
    }
  }

  public boolean yes(String prompt) {
    return until(
        prompt,
        line ->
            Prompt.word(line, List.of("yes", "y", "1", "no", "n", "2"))
                .map(i -> Prompt.Reading.of(i < 3))
                .orElse(Prompt.Reading.again("Type yes or no.")));
  }

  /** Stores events; tells the person what else came of it than that it was stored. */
  public void record(Event... events) {
    List<SetApart> before = moment().apart();
    sharing.tell(open.record(events));
    show(
        UnusableEvents.failing(
            moment().apart().stream().filter(a -> !before.contains(a)).toList()));
  }

  public Sharing sharing() {
    return sharing;
  }

  public boolean isDanger(String check) {
    return base().checks().containsKey(check) && base().checks().get(check).danger();
  }

  /** Queries an answer that the present belief calls very unlikely, before it counts. */
  public boolean isSure(Moment moment, Check check, Answer answer) {
    Optional<Interview.Hearing> hearing = open.interview().hear(moment, check, answer);
    if (hearing.isEmpty() || !hearing.get().unlikely()) {
      return true;
    }
    Interview.Hearing heard = hearing.get();
    show(
        Block.paragraph(
            Text.of("That means \"")
                .and(Text.strong(Wording.meaning(check, heard.finding().outcome())))
                .and(
                    "\", which after all so far is rare ("
                        + Figures.percent(heard.chance())
                        + "). Is it really so?")));
    return yes("yes to keep it, no to answer again");
  }

  public static String prompt(Check check) {
    return check
        .measures()
        .map(m -> m.unitWord().isEmpty() ? "Reading" : "Reading in " + m.unitWord())
        .orElse("Answer");
  }
}
