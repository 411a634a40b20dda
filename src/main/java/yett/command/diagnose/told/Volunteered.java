package yett.command.diagnose.told;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import yett.command.common.HeardAnswer;
import yett.command.common.ListChoice;
import yett.command.common.Words;
import yett.command.diagnose.answer.SpokenReading;
import yett.command.diagnose.sitting.Choices;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Role;
import yett.saying.Forcing;
import yett.saying.Heard;
import yett.saying.Holding;
import yett.saying.Tellings;
import yett.saying.Thing;

/**
 * Takes up what a person tells without being asked. It is shown back and confirmed; then it counts
 * as an answer. Words that may mean a danger are asked about first.
 */
public final class Volunteered {
  /**
   * Words that some prompt asks for. At any other prompt they are slips, and nothing is understood
   * from them.
   */
  /** What a round of looks or the list of checks takes; elsewhere it is no reading. */
  private static final Pattern OF_A_LIST = Pattern.compile("(?i)(?:how|one|look|step)\\s+\\d+");

  private static final int MOST = 5;

  /** Words from which a line says more than what is understood of it. */
  private static final int SENTENCE = 4;

  private final Sitting sitting;
  private final ToldAndConfirmed takenUp;
  private final ToldDangers dangers;
  private final ToldReadings readings;
  private final Consumer<String> worksAgain;

  /** The check whose question a caller is at. */
  private Optional<Check> asked = Optional.empty();

  /**
   * @param worksAgain takes a caller's words by which the gate works again
   */
  public Volunteered(Sitting sitting, Consumer<String> worksAgain) {
    this.sitting = sitting;
    this.worksAgain = worksAgain;
    this.takenUp = new ToldAndConfirmed(sitting);
    this.dangers = new ToldDangers(sitting, takenUp);
    this.readings = new ToldReadings(sitting, takenUp);
  }

  /** Takes up words that the person explicitly wants to tell, whatever the question is. */
  public void tell(String words) {
    String text = words.isEmpty() ? sitting.line("What do you see or read?") : words;
    if (text.isEmpty()) {
      return;
    }
    if (sitting.moment().step() instanceof Step.AskDangers) {
      keep(text); // dangers come first; the words are taken up afterwards
    } else if (!take(text)) {
      keep(text);
      sitting.say("These words match nothing here; they are kept as a note.");
    }
  }

  /**
   * Takes up what a caller says at the question of a check. They mostly answer it in words of their
   * own, so its outcomes are offered first, whatever else the words may mean.
   *
   * @return false if nothing is understood from them
   */
  public boolean hearAt(Check check, String line) {
    asked = Optional.of(check);
    try {
      return hear(line);
    } finally {
      asked = Optional.empty();
    }
  }

  /**
   * Takes up words that do not answer the question.
   *
   * @return false if nothing is understood from them, so that the question has to be asked again
   */
  public boolean hear(String line) {
    boolean telling =
        !(sitting.moment().step() instanceof Step.AskDangers)
            && !isOfGate(line)
            && line.codePoints().filter(Character::isLetter).count() >= 1
            && line.strip().length() >= 4
            && !Words.isPrompted(line)
            && !OF_A_LIST.matcher(line.strip()).matches();
    boolean makesSafe = sitting.moment().step() instanceof Step.MakeSafe;
    boolean taken = telling && take(line.strip());
    if (telling && !taken && makesSafe) {
      keep(line.strip());
      sitting.say("Your words are kept. People first: go on with the steps.");
      return true;
    }
    return taken;
  }

  /** Whether the gate is being described; then "24 V battery" is no measurement. */
  private boolean isOfGate(String line) {
    return sitting.moment().step() instanceof Step.AskSite
        && SpokenReading.isIn(line, sitting.base())
        && !isDanger(line);
  }

  /**
   * The same for a line at this check, unless the line answers it. Returns whether something was
   * understood.
   */
  public boolean hearElsewhere(Check check, String line) {
    boolean answers = HeardAnswer.to(check, line).answer().isPresent();
    return (!answers || isElsewhere(check, line)) && !isOtherReading(check, line) && hear(line);
  }

  /** Whether a bare reading in the unit of another quantity answers a question for a reading. */
  public boolean isOtherReading(Check check, String line) {
    return check.measured()
        && HeardAnswer.to(check, line).answer().isEmpty()
        && SpokenReading.all(line, sitting.base()).stream()
            .filter(r -> r.words().isEmpty() && r.hasUnit())
            .anyMatch(r -> r.checks().stream().noneMatch(c -> isAlike(c, check)));
  }

  private static boolean isAlike(Check one, Check other) {
    return one.measures().get().quantity() == other.measures().get().quantity();
  }

  /** Whether words that share something with an answer to this check mean something else. */
  public boolean isElsewhere(Check check, String line) {
    String text = line.strip().toLowerCase(Locale.ROOT);
    boolean plain =
        check.measured()
            || !text.contains(" ")
            || check.outcomes().stream()
                .anyMatch(o -> o.text().toLowerCase(Locale.ROOT).contains(text));
    if (plain) {
      return false;
    }
    List<String> parts = ListChoice.apart(text);
    boolean answers =
        HeardAnswer.to(check, text).answer().filter(a -> a.choices().size() > 1).isPresent();
    if (answers && parts.stream().noneMatch(p -> isElsewhere(check, p))) {
      return false;
    }
    Heard heard = tellings().hear(text);
    return !heard.dangers().isEmpty()
        || !heard.findings().isEmpty()
            && heard.things().stream().noneMatch(t -> t.card().equals(check.id()));
  }

  private static boolean isSentence(String line) {
    return line.strip().split("\\s+").length >= SENTENCE;
  }

  /** Keeps a caller's words that were taken up already, so that nothing hears them once more. */
  private void keepHeard(String words) {
    if (isCall() && sitting.moment().state().closed().isEmpty()) {
      sitting.record(new Event.Noted(Event.Noted.HEARD + words));
    }
  }

  /** Whether the words may mean a danger. */
  public boolean isDanger(String words) {
    return !tellings().hear(words).dangers().isEmpty();
  }

  private boolean isCall() {
    return sitting.moment().state().role() == Role.CALLER;
  }

  /** Keeps words as they are: a caller's as said, anybody else's as a note. */
  public void keep(String words) {
    sitting.record(isCall() ? new Event.Said(words) : new Event.Noted(words));
  }

  /** Asks what the words mean; returns false if nothing is understood from them. */
  private boolean take(String words) {
    Optional<String> rest = readings.taken(words, this);
    if (rest.isPresent()) {
      if (!rest.get().isBlank()) {
        take(rest.get());
      }
      return true;
    }
    Heard heard = tellings().hear(words);
    List<Thing> told = dangers.among(heard);
    boolean single = !words.contains(" ");
    if (!told.isEmpty() && dangers.ask(told, words, this::keep)) {
      return true;
    }
    if ((Forcing.isOnlyMeant(words) || Holding.in(words))
        && sitting.moment().state().role() == Role.CALLER) {
      keep(words); // they were told not to; what else it says is read back
      return true;
    }
    if (told.isEmpty() && new WorksAgain(sitting).tellsOfIt(words)) {
      worksAgain.accept(words);
      return true;
    }
    Optional<Thing> named = new NamedThing(sitting.base()).of(words);
    List<Thing> others =
        named.map(List::of).orElseGet(() -> answersFirst(words, takenUp.news(heard.things())));
    if (single && named.isEmpty()
        || others.isEmpty()
        || sitting.moment().step() instanceof Step.MakeSafe) {
      if (!told.isEmpty()) {
        keepHeard(words); // not this danger, but "he feels wobbly" is for whoever goes to know
      }
      return !told.isEmpty();
    }
    boolean sure = named.isPresent() && !single;
    List<String> instead = new ArrayList<>();
    List<Thing> meant =
        sure
            ? others
            : new Choices(sitting)
                .several(
                    others,
                    takenUp::words,
                    line -> isCall() && isSentence(line) && instead.add(line));
    if (!instead.isEmpty()) { // a caller does not wait: "oh no, it has shut on his leg"
      keepHeard(words);
      if (!take(instead.get(0))) {
        keepHeard(instead.get(0));
      }
      return true;
    }
    takenUp.take(meant);
    boolean report = sitting.moment().state().told().histories().isEmpty();
    if (!meant.isEmpty() && (report && !sure || others.size() > 1) && !single && !isCall()) {
      keep(words); // what was taken rarely says all of it: "in the rain it will not close"
    } else if (isSentence(words)) {
      keepHeard(words); // "new lamps, since Friday" is taken as "something new nearby"
    }
    if (told.isEmpty()) {
      hearComplaints(
          meant.stream().filter(t -> t.kind() == Thing.Kind.COMPLAINT).map(Thing::card).toList());
    }
    if (meant.isEmpty() && !single && !isCall()) {
      keep(words); // what was said is worth keeping, though it is none of this
      sitting.say("Your words are kept as a note.");
    }
    return true;
  }

  private List<Thing> answersFirst(String words, List<Thing> others) {
    if (asked.filter(c -> !c.measured() && words.contains(" ")).isEmpty()) {
      return others;
    }
    String check = asked.get().id();
    return Stream.concat(
            tellings().answers(check, words).stream(),
            others.stream().filter(t -> !t.card().equals(check)))
        .limit(MOST)
        .toList();
  }

  /** Asks about the dangers of which complaints tell that were picked, not said. */
  public void hearComplaints(List<String> complaints) {
    dangers.askOf(complaints);
  }

  /** The same for complaints that are new after a repair. */
  public void hearNewComplaints(List<String> complaints) {
    dangers.askAnewOf(complaints);
  }

  /** Hears dangers in words stored in any case; true if there is one, or the list comes again. */
  public boolean hearDanger(String words) {
    List<Thing> told = words.isBlank() ? List.of() : dangers.among(tellings().hear(words));
    return !told.isEmpty() && dangers.ask(told, words, kept -> {});
  }

  private Tellings tellings() {
    return sitting.ears().tellings();
  }
}
