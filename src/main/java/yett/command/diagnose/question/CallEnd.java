package yett.command.diagnose.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.Text;
import yett.interview.event.Answer;
import yett.interview.event.Ending;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.interview.state.CallLog;
import yett.interview.state.CaseState;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.rules.Conclusion.StopNow;
import yett.saying.Negation;
import yett.wording.CallWords;

/** Endings of a call that the caller can bring about at any prompt. */
public final class CallEnd {
  /** Instructions to a caller for trying the gate. */
  public static final String TO_TRY =
      "See that nobody holds the gate or leans on it. Stand to the side, with nobody in the opening."
          + " Let it open once and close once, and watch. Does it run as it should?";

  private static final Pattern NO = Pattern.compile("(?i)(?:no|nope|nah)[,.;:! ]+(?<more>\\S.*)");

  private static final Pattern DID =
      Pattern.compile(
          "(?i)\\b(?:moved|shifted|cleaned|wiped|cleared|removed|brushed|pulled out|picked up"
              + "|took|taken|put|pushed|pressed|switched|turned|flicked|plugged|reset)\\b");

  /** What follows a "yes" may take it back: "yes but it stops". */
  private static final Pattern YES =
      Pattern.compile("(?i)(?:yes|yeah|yep|yup|aye)[,.;:! ]+(?<more>\\S.*)");

  private static final Pattern TAKEN_BACK =
      Pattern.compile(
          "(?i)\\b(?:but|except|only|almost|nearly|half|part|once|still|then|though|should|think"
              + "|guess|suppose|maybe|probably)\\b|n['\u2019]t\\b");

  /** "He says it opens and shuts fine now": nothing but that it runs. */
  private static final Pattern RUNS =
      Pattern.compile(
          "(?i)(?:(?:he|she|they) says? )?(?:it|the gate) (?:both )?GOES(?:,? and (?:it )?GOES)?"
                  .replace("GOES", "(?:opens?|closes?|shuts?|runs?|works?|goes|moves)")
              + "(?:[,.! ]+(?:now|again|fine|well|ok|okay|properly|nicely|great|lovely|brilliant"
              + "|marvellous|perfect(?:ly)?|thanks?|thank you|all right|both ways|like it should"
              + "|as (?:it should|usual|before)))*[,.! ]*");

  /** Said where the cause is asked for, it takes back that the gate works. */
  private static final Pattern NOT_SO =
      Pattern.compile(
          "(?i)(?:no|nah|wait)[, ]+(?:wait|it|that|sorry|no)\\b.*"
              + "|.*\\b(?:(?:does|do|did|is|was)(?:n['\u2019]t| not|nt) (?:work|run|go|open|close|right"
              + "|working|running)|still (?:dead|broken|stuck)|i only meant|by mistake)\\b.*");

  private final Sitting sitting;
  private final PromptRequests wishes;
  private final UnsettledDangers unsettled;
  private Optional<CallLead> lead = Optional.empty();
  private String said = "";

  CallEnd(Sitting sitting, PromptRequests wishes) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.unsettled = new UnsettledDangers(sitting);
  }

  /** Says who leads the call, and knows how somebody is sent. */
  void ledBy(CallLead leads) {
    lead = Optional.of(leads);
  }

  private boolean isCall() {
    return sitting.moment().state().role() == Role.CALLER;
  }

  /**
   * Asks whether the gate was seen to run and what put it right, and closes the call.
   *
   * @param words the caller's words, if they are not stored yet
   */
  public void worksAgain(Optional<String> words) {
    if (!isCall()) {
      sitting.say("These words end a call. At the gate, the proofs show whether it works.");
      return;
    }
    words.ifPresent(w -> sitting.record(new Event.Said(w)));
    end(words);
  }

  /** The same for words that are stored already. */
  public void worksAgainAsSaid(String words) {
    end(Optional.of(words));
  }

  private void end(Optional<String> words) {
    if (sitting.moment().step() instanceof Step.AskDangers) {
      if (words.isEmpty()) {
        sitting.record(new Event.Said("It works again."));
      }
      sitting.say("The list of dangers comes first; then this.");
      return;
    }
    if (unsettled.sends("It works again")
        || !isOver()
        || !wasSeenToRun()
        || new SolvedBefore(sitting.open()).sends(sitting)) {
      return;
    }
    WhatToWatch watching = new WhatToWatch(sitting);
    Optional<Repair> done = done();
    Optional<String> told =
        words.filter(w -> saysWhat(w) || done.isEmpty() && watching.tellsWhatDidIt(w));
    String typed =
        sitting
            .line(
                told.isPresent()
                    ? "What made it work? Press Enter to keep what they said, or add more"
                    : "What made it work? In their words; press Enter "
                        + done.map(d -> "for: " + d.name()).orElse("if nobody knows"))
            .strip();
    if (NOT_SO.matcher(typed).matches()) {
      wishes.volunteered().keep(typed);
      sitting.say("Then the call goes on where it was.");
      return;
    }
    Optional<Repair> did = typed.isEmpty() && told.isEmpty() ? done : Optional.empty();
    String added = typed.matches("\\d*") ? "" : typed;
    String what =
        did.map(Repair::name)
            .orElse(
                Stream.of(told.orElse(""), added)
                    .filter(t -> !t.isEmpty())
                    .collect(Collectors.joining("; ")));
    List<String> watch =
        did.map(watching::after).orElseGet(() -> watching.after(what + " " + words.orElse("")));
    sitting.show(Block.paragraph(Text.strong("Read out:")), Block.numbered(watch));
    close(
        Ending.WORKS_AGAIN,
        new Event.Tended(Tending.WORKS_AGAIN, what.isEmpty() ? "nobody knows why" : what));
  }

  /**
   * Whether each danger is over that was reported and after which a caller may go on, such as
   * children who rode on the gate. That the gate runs does not say so.
   */
  private boolean isOver() {
    return sitting.moment().judgement().stops().stream().allMatch(this::isOver);
  }

  private boolean isOver(StopNow stop) {
    Optional<CaseState.Answered> told = sitting.moment().state().given(stop.event());
    if (told.isEmpty()) {
      return true; // it rests on no answer that somebody could give anew
    }
    String name = sitting.base().stops().get(stop.stop()).name();
    sitting.show(
        Block.paragraph(
            Text.of("Read out: ")
                .and(Text.strong("You said before: " + name + ". Is that over now?"))));
    if (!yes("yes; no if it is not, or if nobody can tell")) {
      sitting.say("Then somebody has to see to it. The case stays open.");
      sitting.record(new Event.GaveUp("It works again. A danger was reported"));
      return false;
    }
    Check check = sitting.base().checks().get(told.get().check());
    sitting.record(new Event.Answered(check.id(), new Answer.Chosen(check.outcomes().get(0).id())));
    return true;
  }

  /** Whether words say of something that it was moved, cleaned or put back, whatever it is. */
  private static boolean saysWhat(String words) {
    return DID.matcher(words).find();
  }

  /** What was done last on this call at Yett's word. */
  private Optional<Repair> done() {
    return sitting.moment().state().work().repairs().stream()
        .map(sitting.base().repairs()::get)
        .filter(Objects::nonNull)
        .reduce((a, b) -> b);
  }

  private boolean wasSeenToRun() {
    sitting.show(
        Block.heading("It works again"),
        Block.paragraph(
            Text.of("Read out: ")
                .and(
                    Text.strong(
                        "Has it opened once and closed once since then, as it should, while"
                            + " somebody watched?"))));
    boolean seen = yes("yes; no if it has not, or if nobody watched");
    // Between the steps of a repair nobody runs the gate: what has to be seen first may still come.
    if (!seen && !isDeclined() && !(sitting.moment().step() instanceof Step.Mend)) {
      sitting.show(Block.paragraph(Text.of("Read out: ").and(Text.strong(TO_TRY))));
      seen = yes("yes; no if it does not, or if it cannot be tried");
    }
    if (!seen) {
      sitting.say("Then the call goes on where it was.");
    }
    return seen;
  }

  /**
   * Reads yes or no; what follows the "no" is kept as said, "no, it's off". Nobody is asked to run
   * a gate of which that was told.
   */
  private boolean yes(String prompt) {
    said = "";
    return sitting.until(
        prompt,
        line -> {
          Matcher no = NO.matcher(line);
          if (no.matches()) {
            said = no.group("more").strip();
            wishes.volunteered().keep(said);
            return Prompt.Reading.of(false);
          }
          Matcher yes = YES.matcher(line);
          if (RUNS.matcher(line).matches() || yes.matches() && isPlain(yes.group("more"))) {
            wishes.volunteered().keep(line.strip());
            return Prompt.Reading.of(true);
          }
          return Prompt.yesOrNo(line);
        });
  }

  /** Whether what follows a "yes" leaves it standing, and tells of no danger. */
  private boolean isPlain(String more) {
    return RUNS.matcher(more).matches()
        || !TAKEN_BACK.matcher(more).find()
            && !Negation.in(more)
            && !wishes.volunteered().isDanger(more);
  }

  /** Whether more was told than a "no", so that it is taken up before the gate is tried. */
  private boolean isDeclined() {
    return !said.isEmpty();
  }

  /** Ends the call because the caller no longer wants anybody, or cannot be reached. */
  void broughtBy(Words.Wish wish, String why) {
    if (!isCall()) {
      sitting.say("These words end a call, and this is not a call.");
      return;
    }
    boolean cancelled = wish == Words.Wish.CANCEL;
    if (cancelled && unsettled.isOpen()) {
      sitting.say("The list of dangers comes first. If they have gone, type: no reply.");
      return;
    }
    if (cancelled && unsettled.sends("Called off")) {
      return;
    }
    String words =
        why.isEmpty()
            ? sitting.line(
                cancelled
                    ? "Why? In their words, or Enter"
                    : "How many times did you try? Or press Enter")
            : why;
    if (cancelled ? unsettled.keepsOpen() : unsettled.keepsOpenUnreached()) {
      sitting.record(new Event.Tended(Tending.NOT_REACHED, words.strip()));
      CallLead leads = lead.orElseThrow();
      if (!CallLog.of(sitting.moment().entries()).isSent()) {
        leads.send(unsettled.isDanger(), unsettled.level());
      }
      leads.leave();
    }
    if (cancelled) {
      sitting.show(
          Block.paragraph(Text.strong("Read out:")),
          Block.numbered(
              List.of(
                  "Nobody will be sent now. Call again at any time; this call is kept.",
                  "Nobody pushes or pulls the gate, opens a cover or reaches into the chain.")));
    }
    close(
        cancelled ? Ending.CANCELLED : Ending.NOT_REACHED,
        new Event.Tended(cancelled ? Tending.CANCELLED : Tending.NOT_REACHED, words.strip()));
  }

  /** Who was sent and is not at the gate yet. */
  private Optional<String> isOnTheWay() {
    return CallLog.of(sitting.moment().entries())
        .stage()
        .filter(t -> t.what() != Tending.AT_THE_GATE)
        .map(CallWords::of);
  }

  private void close(Ending ending, Event.Tended how) {
    isOnTheWay()
        .ifPresent(
            sent -> sitting.say("Already " + sent + ". Tell them: nobody has to come any more."));
    OptionalInt closed =
        new Questions(sitting, wishes)
            .word(
                "\"close\" to close the call as " + ending.words() + ", \"open\" to go on",
                List.of("close", "open"),
                "Type close, or open to go on with the call.");
    if (closed.isEmpty() || closed.getAsInt() != 0) {
      return;
    }
    List<Event> events = new ArrayList<>(List.of(how, new Event.Closed(ending)));
    sitting.record(events.toArray(Event[]::new));
    if (sitting.moment().state().closed().isPresent()) {
      String id = sitting.open().id().toString();
      sitting.say("Closed: " + ending.words() + ". The record: record " + id + ".");
      if (ending != Ending.WORKS_AGAIN) {
        sitting.say("If they ring again: resume " + id + " --as caller.");
      }
    }
  }
}
