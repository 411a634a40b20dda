package yett.interview.course;

import java.util.List;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.step.Step;

/** A path to a state, told as a story: who did what, one line each. */
final class Story {
  private Story() {}

  static String of(List<Entry> entries) {
    StringBuilder story = new StringBuilder();
    for (Entry entry : entries) {
      story.append("  ").append(entry.number()).append(". the ").append(entry.by().word());
      story.append(' ').append(told(entry.event())).append('\n');
    }
    return story.toString();
  }

  static String of(Step step) {
    String what = step.getClass().getSimpleName();
    if (step instanceof Step.Enter e) {
      return what + " " + e.setUp().id();
    } else if (step instanceof Step.Leave l) {
      return what + " " + l.setUp().id();
    } else if (step instanceof Step.HandOver h) {
      return what + " " + h.ending() + ", " + h.because();
    } else if (step instanceof Step.Ask a) {
      return what + " " + a.check().id();
    }
    return step instanceof Step.Mend m ? what + " " + m.repair().id() : what;
  }

  private static String told(Event event) {
    if (event instanceof Event.Answered a) {
      return "answers " + a.check() + ": " + words(a.answer());
    } else if (event instanceof Event.Corrected c) {
      return "answers " + c.event() + " anew: " + words(c.answer());
    } else if (event instanceof Event.Retracted r) {
      return "takes " + r.event() + " back";
    } else if (event instanceof Event.SetUpEntered e) {
      return "brings about " + e.setUp() + (e.next().isEmpty() ? "" : ", for " + e.next());
    } else if (event instanceof Event.SetUpLeft e) {
      return "leaves " + e.setUp();
    } else if (event instanceof Event.Repaired r) {
      return (r.done() ? "does " : "cannot do ") + r.repair();
    } else if (event instanceof Event.Retested r) {
      return "tries the gate: " + r.words();
    } else if (event instanceof Event.MadeSafe m) {
      return "makes safe: " + m.stop() + m.setUps().map(s -> "; in force then " + s).orElse("");
    } else if (event instanceof Event.Closed c) {
      return "closes: " + c.ending().words();
    }
    return event.toString();
  }

  private static String words(Answer answer) {
    return answer.map(c -> c.outcome(), r -> r.typed(), () -> "cannot tell", () -> "not now");
  }
}
