package yett.wording;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import yett.interview.event.Event;

/** Says in a few words what an event was. */
record EventWords(Wording words) implements Event.Visitor<String> {

  @Override
  public String opened(Event.Opened event) {
    return "a step";
  }

  @Override
  public String siteAnswered(Event.SiteAnswered event) {
    return "the site answer \""
        + words.site(event.question(), event.answer())
        + "\" ("
        + Wording.spaced(event.question())
        + ")";
  }

  @Override
  public String siteTaken(Event.SiteTaken event) {
    return "the page with the gate as installed";
  }

  @Override
  public String said(Event.Said event) {
    return event.words().isEmpty()
        ? "words that were deleted"
        : "the words \"" + event.words() + "\"";
  }

  @Override
  public String complained(Event.Complained event) {
    return "the complaint: " + names(event.complaints(), words::complaint);
  }

  @Override
  public String pressed(Event.Pressed event) {
    return "the answer on urgency";
  }

  @Override
  public String happened(Event.Happened event) {
    return "the history: " + names(event.histories(), words::history);
  }

  @Override
  public String answered(Event.Answered event) {
    return "the answer \""
        + words.answer(event.check(), event.answer())
        + "\" to: "
        + words.ask(event.check());
  }

  @Override
  public String setUpEntered(Event.SetUpEntered event) {
    return "entering \"" + words.setUp(event.setUp()) + "\"";
  }

  @Override
  public String setUpLeft(Event.SetUpLeft event) {
    return "leaving \"" + words.setUp(event.setUp()) + "\"";
  }

  @Override
  public String repaired(Event.Repaired event) {
    String name = "\"" + words.repair(event.repair()) + "\"";
    return event.done() ? "the repair " + name : "the word that " + name + " could not be done";
  }

  @Override
  public String retested(Event.Retested event) {
    return "the retest (the gate " + words.tried(event) + ")";
  }

  @Override
  public String dangersAgain(Event.DangersAgain event) {
    return "another look for dangers";
  }

  @Override
  public String wentOn(Event.WentOn event) {
    return "the choice to go on asking";
  }

  @Override
  public String askedFor(Event.AskedFor event) {
    return words.isCheck(event.check())
        ? "the request for a check: " + words.ask(event.check())
        : "the request for a repair: " + words.repair(event.check());
  }

  @Override
  public String returned(Event.Returned event) {
    return "another look at the gate as it was left";
  }

  @Override
  public String takenUp(Event.TakenUp event) {
    return "the reopening of the case";
  }

  @Override
  public String reopened(Event.Reopened event) {
    return "the choice to go on after a failed proof";
  }

  @Override
  public String kept(Event.Kept event) {
    return "the word that two answers are both right";
  }

  @Override
  public String noted(Event.Noted event) {
    return "the note \"" + event.text() + "\"";
  }

  @Override
  public String retracted(Event.Retracted event) {
    return "a step";
  }

  @Override
  public String corrected(Event.Corrected event) {
    return "the change of an answer";
  }

  @Override
  public String madeSafe(Event.MadeSafe event) {
    return "making safe: " + words.stop(event.stop());
  }

  @Override
  public String gaveUp(Event.GaveUp event) {
    return "the request to hand over";
  }

  @Override
  public String closed(Event.Closed event) {
    return "the closing of the case";
  }

  @Override
  public String tended(Event.Tended event) {
    return "the desk: " + CallWords.of(event);
  }

  @Override
  public String forceTaken(Event.ForceTaken event) {
    return "a force of "
        + Math.round(event.peak())
        + " N at "
        + event.gap()
        + " mm, "
        + event.height().words();
  }

  @Override
  public String unread(Event.Unread event) {
    return "an entry that this version of the program cannot read";
  }

  private static String names(List<String> ids, UnaryOperator<String> name) {
    return ids.isEmpty() ? "none" : ids.stream().map(name).collect(Collectors.joining("; "));
  }
}
