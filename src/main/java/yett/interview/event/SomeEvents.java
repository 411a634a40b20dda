package yett.interview.event;

/** A visitor for some kinds of event only; all others are handled by {@link #other}. */
public interface SomeEvents<R> extends Event.Visitor<R> {

  /** Handles a kind of event without a method of its own. */
  R other(Event event);

  @Override
  default R opened(Event.Opened event) {
    return other(event);
  }

  @Override
  default R siteAnswered(Event.SiteAnswered event) {
    return other(event);
  }

  @Override
  default R siteTaken(Event.SiteTaken event) {
    return other(event);
  }

  @Override
  default R said(Event.Said event) {
    return other(event);
  }

  @Override
  default R complained(Event.Complained event) {
    return other(event);
  }

  @Override
  default R pressed(Event.Pressed event) {
    return other(event);
  }

  @Override
  default R happened(Event.Happened event) {
    return other(event);
  }

  @Override
  default R answered(Event.Answered event) {
    return other(event);
  }

  @Override
  default R setUpEntered(Event.SetUpEntered event) {
    return other(event);
  }

  @Override
  default R setUpLeft(Event.SetUpLeft event) {
    return other(event);
  }

  @Override
  default R repaired(Event.Repaired event) {
    return other(event);
  }

  @Override
  default R retested(Event.Retested event) {
    return other(event);
  }

  @Override
  default R reopened(Event.Reopened event) {
    return other(event);
  }

  @Override
  default R kept(Event.Kept event) {
    return other(event);
  }

  @Override
  default R noted(Event.Noted event) {
    return other(event);
  }

  @Override
  default R retracted(Event.Retracted event) {
    return other(event);
  }

  @Override
  default R corrected(Event.Corrected event) {
    return other(event);
  }

  @Override
  default R madeSafe(Event.MadeSafe event) {
    return other(event);
  }

  @Override
  default R gaveUp(Event.GaveUp event) {
    return other(event);
  }

  @Override
  default R closed(Event.Closed event) {
    return other(event);
  }

  @Override
  default R dangersAgain(Event.DangersAgain event) {
    return other(event);
  }

  @Override
  default R returned(Event.Returned event) {
    return other(event);
  }

  @Override
  default R takenUp(Event.TakenUp event) {
    return other(event);
  }

  @Override
  default R wentOn(Event.WentOn event) {
    return other(event);
  }

  @Override
  default R askedFor(Event.AskedFor event) {
    return other(event);
  }

  @Override
  default R tended(Event.Tended event) {
    return other(event);
  }

  @Override
  default R forceTaken(Event.ForceTaken event) {
    return other(event);
  }

  @Override
  default R unread(Event.Unread event) {
    return other(event);
  }
}
