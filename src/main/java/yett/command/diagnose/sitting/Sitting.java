package yett.command.diagnose.sitting;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import yett.command.common.Prompt;
import yett.command.diagnose.screen.BeliefViews;
import yett.command.diagnose.screen.CautionViews;
import yett.command.diagnose.screen.InspectionViews;
import yett.command.diagnose.screen.MovementViews;
import yett.command.diagnose.screen.StepViews;
import yett.command.diagnose.screen.UnusableEvents;
import yett.command.diagnose.screen.WhyViews;
import yett.console.Block;
import yett.console.Console;
import yett.console.Pages;
import yett.console.Rewording;
import yett.desk.OpenCase;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.moment.SetApart;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** A person at a console with an open case. All parts of a conversation work with this. */
public final class Sitting {
  private static final int ROOM_TO_TYPE = 12;

  private final Console console;
  private final OpenCase open;
  private final CautionViews cautions;
  private final StepViews views;
  private final BeliefViews beliefs;
  private final MovementViews movements;
  private final WhyViews why;
  private final Sharing sharing;
  private final Ears ears;
  private final TabWords tab;
  private final Rewording rewording;
  private final ReadScreens screens = new ReadScreens(this);
  private final Overheard overheard = new Overheard(this);
  private boolean keptHere;

  public Sitting(Console console, OpenCase open) {
    this.console = console;
    this.open = open;
    this.cautions = new CautionViews(base(), () -> moment().state().work().setUps());
    this.views = new StepViews(base(), cautions);
    this.beliefs = new BeliefViews(base());
    this.movements = new MovementViews(base());
    this.why = new WhyViews(base(), beliefs);
    this.sharing = new Sharing(this);
    this.ears = new Ears(base(), open::gates);
    this.tab = new TabWords(base());
    this.rewording = new Rewording(base().units()::in);
  }

  public RuleBase base() {
    return open.interview().expertise().base();
  }

  public OpenCase open() {
    return open;
  }

  /** Notes that the case is stored on this computer and will get another number on the server. */
  public void keepHere() {
    keptHere = true;
  }

  public boolean isKeptHere() {
    return keptHere;
  }

  public Moment moment() {
    return open.moment();
  }

  public StepViews views() {
    return views;
  }

  public Ears ears() {
    return ears;
  }

  public CautionViews cautions() {
    return cautions;
  }

  public BeliefViews beliefs() {
    return beliefs;
  }

  /**
   * What an answer was taken to mean. In an inspection there is no belief; the answer passes or
   * fails.
   */
  public List<Block> taken(Moment before, Check check) {
    return moment().state().isInspection()
        ? new InspectionViews(base(), cautions).taken(moment(), List.of(check.id()))
        : movements.taken(before, moment(), check);
  }

  /**
   * Whether the only entries since that moment are forces from a meter, so that the question is
   * still open.
   */
  public boolean onlyForcesSince(Moment then) {
    List<Entry> since =
        moment()
            .entries()
            .subList(
                Math.min(then.entries().size(), moment().entries().size()),
                moment().entries().size());
    return !since.isEmpty() && since.stream().allMatch(e -> e.event() instanceof Event.ForceTaken);
  }

  public MovementViews movements() {
    return movements;
  }

  /** The screens that explain the present step. */
  public WhyViews why() {
    return why;
  }

  /** Divides screens into pages for this console. */
  Pages pages() {
    return new Pages(console);
  }

  /** Shows what has to be read, a page at a time if it would scroll away. */
  public void screen(List<Block> blocks) {
    screens.show(pages(), blocks);
  }

  /** Sets what handles other lines typed where only Enter is expected. */
  public void hears(Predicate<String> requests) {
    screens.hears(requests);
  }

  /** Whether a line was a request, or told something; if so, it has been handled. */
  public boolean grants(String line) {
    return screens.grants(line);
  }

  public void show(Block... blocks) {
    show(List.of(blocks));
  }

  /** Shows blocks in the units that the person has chosen. */
  public void show(List<Block> blocks) {
    List<Block> said = blocks.stream().map(rewording::of).toList();
    screens.shown(console.lines(said));
    console.show(said);
  }

  public void say(String sentence) {
    show(Block.paragraph(sentence));
  }

  /** Reads a line. "save", and what comes first on a call, work at every prompt. */
  public String line(String prompt) {
    screens.typed();
    String shown = prompt + "> ";
    if (shown.length() + ROOM_TO_TYPE > console.width()) {
      LongPrompt parts = LongPrompt.of(prompt, console.width() - ROOM_TO_TYPE - "> ".length());
      console.say(parts.said());
      shown = parts.asked() + "> ";
    }
    String typed =
        Prompt.withLeave(console).line(shown, tab.words()).orElseThrow(CaseLeftException::new);
    overheard.hear(typed);
    return typed;
  }

  /** Asks until a line can be read. */
  public <T> T until(String prompt, Function<String, Prompt.Reading<T>> reader) {
    return until(() -> prompt, reader);
  }

  /** The same with a prompt that may change; an empty complaint shows no message. */
  public <T> T until(Supplier<String> prompt, Function<String, Prompt.Reading<T>> reader) {
    return Prompt.until(() -> Optional.of(line(prompt.get())), reader, this::say).orElseThrow();
  }

  public boolean yes(String prompt) {
    return until(prompt, Prompt::yesOrNo);
  }

  /** Stores events, and tells the person if anything happened besides. */
  public void record(Event... events) {
    List<SetApart> before = moment().apart();
    cautions.recorded(moment().step(), events);
    sharing.tell(open.record(events));
    show(
        UnusableEvents.failing(
            moment().apart().stream().filter(a -> !before.contains(a)).toList()));
  }

  public Sharing sharing() {
    return sharing;
  }

  /** The number of the next question, without the dangers. */
  public int questionNumber() {
    return 1
        + (int)
            moment().state().answers().stream()
                .map(a -> base().checks().get(a.check()))
                .filter(check -> check == null || !check.danger())
                .count();
  }
}
