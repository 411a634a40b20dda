package yett.command.diagnose.opening;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.casebook.CaseId;
import yett.command.common.ClockNotice;
import yett.command.diagnose.conversation.Conversation;
import yett.command.diagnose.question.CallLead;
import yett.command.diagnose.question.SolvedBefore;
import yett.console.Block;
import yett.console.Console;
import yett.desk.Baselines;
import yett.desk.Desk;
import yett.desk.GateMemory;
import yett.desk.OpenCase;
import yett.interview.danger.Dangers;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.interview.event.Tending;
import yett.knowledge.InspectionKind;
import yett.knowledge.Role;

/** Begins a new case with the name of the gate, and leads through it. */
public final class NewCase {
  /** What the case before says of a gate that it left locked off, barred or in pieces. */
  private static final Event.Answered TAKEN_OUT =
      new Event.Answered(Dangers.TAGGED_OFF, new Answer.Chosen("taken-out"));

  private final Desk desk;
  private final Console console;
  private final CallLead.Maker calls;

  public NewCase(Desk desk, Console console, CallLead.Maker calls) {
    this.desk = desk;
    this.console = console;
    this.calls = calls;
  }

  /**
   * Opens a case and leads through it, unless the person leaves before the gate is named.
   *
   * @param words the name of the gate, if it was given in the command
   */
  public void begin(List<String> words, Role role) {
    gate(words, role).ifPresent(gate -> beginAt(gate, role));
  }

  /**
   * Begins a case at this gate. If the gate has open cases, a caller is first asked whether it is
   * about one of them.
   */
  private void beginAt(String gate, Role role) {
    List<Event> said = new ArrayList<>();
    Optional<CaseId> open =
        role == Role.CALLER
            ? earlier().goOn(gate, words -> said.add(new Event.Said(words)))
            : Optional.empty();
    open.ifPresentOrElse(
        id -> goOn(id, gate, false, said), () -> begin(gate, role, Optional.empty(), said));
  }

  private EarlierCalls earlier() {
    return new EarlierCalls(desk.casebook(), console);
  }

  /**
   * Continues a case because of another call about the same fault. What the caller says now is
   * taken up, and dangers are asked about again.
   */
  private void goOn(CaseId id, String gate, boolean known, List<Event> said) {
    try (OpenCase open = desk.open(id, Role.CALLER)) {
      console.show(
          Block.heading("Case " + id + " · " + gate + " · " + WhoAnswers.words(Role.CALLER)),
          Block.paragraph("What was answered stays; what they say now is added to it."));
      open.record(new Event.DangersAgain());
      new Conversation(console, open, Map.of(), calls).ringsAgain(known, said).run();
    }
  }

  /**
   * The same for an inspection. Whoever begins one at a gate where one was left is first asked
   * whether to go on with that.
   */
  public void inspect(List<String> words, Role role, InspectionKind kind) {
    var left = new OpenInspections(desk.casebook(), desk.expertise(), console);
    gate(words, role)
        .ifPresent(
            gate ->
                left.goOn(gate)
                    .ifPresent(
                        chosen ->
                            chosen.ifPresentOrElse(
                                id -> new Resuming(desk, console, calls).goOnInspecting(id, role),
                                () -> begin(gate, role, Optional.of(kind), List.of()))));
  }

  private Optional<String> gate(List<String> words, Role role) {
    desk.prepare();
    String typed = Normalizer.normalize(String.join(" ", words), Normalizer.Form.NFC);
    return new GateChoice(desk.casebook(), console, earlier())
        .of(typed.strip().replaceAll("\\s+", " "), role);
  }

  private void begin(
      String gate, Role role, Optional<InspectionKind> inspection, List<Event> first) {
    Map<String, String> known =
        new GateMemory(desk.casebook(), desk.clock()).known(gate, desk.base());
    ClockNotice.show(desk, console);
    List<Event.Earlier> earlier = new Baselines(desk.casebook(), desk.expertise()).of(gate);
    Optional<UnfinishedCase.Left> unfinished =
        new UnfinishedCase(desk.casebook(), desk.base()).at(gate);
    unfinished.ifPresent(left -> console.show(left.told()));
    if (role != Role.CALLER) {
      List<Block> left = new LeftOpen(desk.casebook(), desk.expertise()).at(gate);
      console.show(left.toArray(Block[]::new));
    }
    CaseId id = desk.casebook().newCase(gate, desk.clock().instant());
    Optional<CaseId> same;
    List<Event> said;
    try (OpenCase open = desk.open(id, role)) {
      open.record(Event.Opened.with(gate, role, desk.expertise().base(), inspection, earlier));
      first.forEach(open::record);
      if (role == Role.CALLER) {
        desk.agent().ifPresent(name -> open.record(new Event.Tended(Tending.TAKEN, name, "")));
        if (unfinished.filter(UnfinishedCase.Left::isOutOfUse).isPresent()
            && desk.base().checks().containsKey(TAKEN_OUT.check())) {
          open.record(TAKEN_OUT);
        }
      }
      console.show(
          Block.heading(
              inspection.map(k -> "Inspection for " + k.word()).orElse("Case")
                  + " "
                  + id
                  + " · "
                  + gate
                  + " · "
                  + WhoAnswers.words(role)),
          Block.paragraph(
              "Every answer is saved at once. At every prompt: "
                  + (inspection.isEmpty()
                      ? "tell, checks, ask, suspect, why, belief, back, correct, unknown, later, "
                          + "note, danger, hand over, save, help."
                      : "remark, back, correct, unknown, later, note, danger, hand over, save, "
                          + "help.")));
      if (role == Role.CALLER) {
        new SolvedBefore(open).tell(console);
      }
      if (role == Role.TRAINEE) {
        console.say("A trainee works under a technician's supervision.");
      }
      Conversation conversation = new Conversation(console, open, known, calls);
      if (desk.isAway()) {
        conversation.keptHere();
      }
      conversation.run();
      new AfterInspection(desk, console, calls).offer(open);
      same = conversation.goesOnIn();
      said = saidIn(open);
    }
    same.ifPresent(other -> goOn(other, desk.casebook().summary(other).siteId(), true, said));
  }

  /** What the caller said in this case, so that it is not asked again. */
  private static List<Event> saidIn(OpenCase open) {
    return open.moment().state().told().said().stream().<Event>map(Event.Said::new).toList();
  }
}
