package yett.wording;

import yett.interview.event.Event;
import yett.interview.event.EventText;
import yett.interview.event.SomeEvents;
import yett.knowledge.RuleBase;

/** Says what somebody entered as a note in the case. */
public final class NoteWords implements SomeEvents<String> {
  private final Wording words;

  public NoteWords(RuleBase base) {
    this.words = new Wording(base);
  }

  @Override
  public String answered(Event.Answered event) {
    return words.ask(event.check()) + " " + words.answer(event.check(), event.answer());
  }

  @Override
  public String corrected(Event.Corrected event) {
    return "an answer changed to " + words.answer("", event.answer());
  }

  @Override
  public String siteAnswered(Event.SiteAnswered event) {
    return Wording.spaced(event.question()) + ": " + words.site(event.question(), event.answer());
  }

  @Override
  public String repaired(Event.Repaired event) {
    return words.repair(event.repair()) + ": " + event.words();
  }

  @Override
  public String retested(Event.Retested event) {
    return "the gate " + words.tried(event);
  }

  @Override
  public String setUpEntered(Event.SetUpEntered event) {
    return words.event(event);
  }

  @Override
  public String setUpLeft(Event.SetUpLeft event) {
    return words.event(event);
  }

  @Override
  public String madeSafe(Event.MadeSafe event) {
    return words.event(event);
  }

  @Override
  public String other(Event event) {
    return EventText.write(event);
  }
}
