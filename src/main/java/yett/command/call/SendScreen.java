package yett.command.call;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import yett.command.diagnose.question.Questions;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.SignalWord;
import yett.console.Text;
import yett.desk.OpenCase;
import yett.dispatch.DispatchSheet;
import yett.dispatch.Dispatcher;
import yett.interview.event.Ending;
import yett.interview.evidence.Chance;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Pressing.Urgency;
import yett.wording.StepWords;
import yett.wording.Wording;

/**
 * The screen at the end of a call after which somebody goes to the gate. The case stays open for
 * them.
 */
final class SendScreen {
  /** How many parts the screen names; the sheet has all. */
  private static final int SHORT = 6;

  /** Parts with a smaller chance of being needed are not read out from a long list. */
  private static final double WORTH = 0.05;

  private final Sitting sitting;
  private final Questions questions;
  private final WhoCalls whoCalls;
  private final Sending sending;
  private final ReadOut readOut;

  SendScreen(Sitting sitting, Questions questions, WhoCalls whoCalls, ReadOut readOut) {
    this.readOut = readOut;
    this.sitting = sitting;
    this.questions = questions;
    this.whoCalls = whoCalls;
    this.sending = new Sending(sitting);
  }

  void show(Step.HandOver step, Moment moment) {
    boolean emergency = step.ending() == Ending.MADE_SAFE;
    DispatchSheet sheet =
        sheet(
            new Dispatcher(sitting.open().interview().expertise(), ZoneId.systemDefault()),
            sitting.open(),
            moment,
            sitting.open().id().toString());
    boolean atOnce = emergency && sheet.urgency().level().equals(Urgency.AT_ONCE.words());
    sitting.screen(blocks(step, moment, sheet, emergency, atOnce));
    whoCalls.ask();
    if (whoCalls.isLeft() || whoCalls.goesOnIn().isPresent()) {
      return;
    }
    Optional<String> before = sending.before();
    before.ifPresent(b -> sitting.say("Already " + b + "."));
    OptionalInt sent =
        questions.word(
            before.isPresent()
                ? "\"send\" if somebody else goes, \"leave\" to keep it as it is, or back"
                : "\"send\" once somebody has been told to go, or back",
            before.isPresent() ? List.of("send", "leave") : List.of("send"),
            before.isPresent()
                ? "Type send, leave, or back to take the last answer back."
                : "Type send, or back to take the last answer back.");
    if (sent.isPresent()) {
      if (sent.getAsInt() == 0) {
        sending.ask(atOnce, sheet.urgency().level());
        whoCalls.askNumber();
      }
      sending.leave();
    }
  }

  /**
   * @param called the name of the case on the sheet
   */
  static DispatchSheet sheet(Dispatcher dispatcher, OpenCase open, Moment moment, String called) {
    CallersOnSheet callers = new CallersOnSheet(open.callers());
    return dispatcher.sheet(moment, called, open.gate(), callers.names(), callers.phones());
  }

  private List<Block> blocks(
      Step.HandOver step, Moment moment, DispatchSheet sheet, boolean emergency, boolean atOnce) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading(atOnce ? "Emergency" : "Send somebody"));
    String urgency =
        Wording.capital(sheet.urgency().level())
            + ": "
            + String.join("; ", sheet.urgency().reasons())
            + ".";
    blocks.add(
        atOnce ? Block.signal(SignalWord.DANGER, urgency) : Block.paragraph(Text.strong(urgency)));
    if (!emergency) {
      blocks.add(Block.paragraph(Wording.capital(StepWords.because(step.because())) + "."));
      if (sheet.diagnosed()) {
        blocks.add(sitting.beliefs().bars(moment, 4));
      } else {
        blocks.add(
            Block.paragraph(
                "Ask who is at the gate or has its key, and for that number. Call them before"
                    + " somebody drives out: what they see tells whom to send, and with what."));
      }
      List<Block.Row> rows = new ArrayList<>();
      sheet
          .minutesOnSite()
          .ifPresent(m -> rows.add(Block.row("On site", "about " + m.likely() + " min")));
      if (sheet.diagnosed()) {
        rows.add(Block.row("Bring", bring(sheet.bring().parts())));
        blocks.add(new Block.Rows(rows));
      }
    }
    blocks.addAll(untilThen(sheet.untilThen()));
    return blocks;
  }

  /** What was read out on this call is not printed a second time; the sheet has all of it. */
  private List<Block> untilThen(List<String> lines) {
    List<String> news = new ArrayList<>(readOut.notYet(lines));
    if (news.size() < lines.size()) {
      news.remove(Dispatcher.CHILD); // it was sent for a grown-up before
    }
    if (news.size() == lines.size()) {
      return List.of(
          Block.paragraph(Text.strong("Read out. This holds until somebody comes:")),
          Block.numbered(lines));
    }
    String kept = "What you read out holds until somebody comes";
    return news.isEmpty()
        ? List.of(Block.paragraph(Text.strong(kept + ".")))
        : List.of(
            Block.paragraph(Text.strong(kept + ". Read out this as well:")), Block.numbered(news));
  }

  private static String bring(List<DispatchSheet.Packed> parts) {
    List<String> worth =
        parts.stream()
            .filter(p -> p.chance() >= WORTH)
            .limit(SHORT)
            .map(DispatchSheet.Packed::name)
            .toList();
    List<DispatchSheet.Packed> others = parts.subList(worth.size(), parts.size());
    if (others.isEmpty()) {
      return parts.isEmpty() ? "no part" : String.join("; ", worth);
    }
    double most = others.stream().mapToDouble(DispatchSheet.Packed::chance).max().orElse(0);
    return (worth.isEmpty() ? "no part in particular" : String.join("; ", worth))
        + "; "
        + others.size()
        + (worth.isEmpty() ? "" : " more")
        + " on the sheet, each needed in at most "
        + Chance.of(most).percent();
  }
}
