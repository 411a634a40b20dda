package yett.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.event.SomeEvents;
import yett.interview.moment.Moment;
import yett.wording.Wording;

/** Writes which answers contradicted each other, and what was changed or taken back. */
final class CorrectionLines {
  private final Wording words;
  private final Moment moment;
  private final Outline page;

  CorrectionLines(Wording words, Moment moment, Outline page) {
    this.words = words;
    this.moment = moment;
    this.page = page;
  }

  void contradictions() {
    List<String> lines = new ArrayList<>();
    for (var c : moment.judgement().contradictions()) {
      boolean kept = moment.state().kept().contains(List.of(c.first(), c.second()));
      lines.add(
          answered(c.first())
              + " against "
              + answered(c.second())
              + ": "
              + c.reason().because()
              + (kept ? ". Both were confirmed." : ". Not settled."));
    }
    page.list("Contradictions", lines);
  }

  private String answered(long event) {
    return moment
        .state()
        .given(event)
        .map(a -> "\"" + words.ask(a.check()) + " " + words.answer(a.check(), a.answer()) + "\"")
        .orElse("an answer that was taken back");
  }

  void corrections() {
    List<String> lines = new ArrayList<>();
    for (Entry entry : moment.entries()) {
      entry
          .event()
          .accept(correction)
          .ifPresent(words -> lines.add(Wording.time(entry.at()) + words));
    }
    page.list("Corrections", lines);
  }

  private final SomeEvents<Optional<String>> correction =
      new SomeEvents<>() {
        @Override
        public Optional<String> retracted(Event.Retracted event) {
          return Optional.of(" Taken back: " + was(event.event()));
        }

        @Override
        public Optional<String> corrected(Event.Corrected event) {
          return Optional.of(" Changed: " + was(event.event()) + " Now: " + now(event));
        }

        @Override
        public Optional<String> other(Event event) {
          return Optional.empty();
        }
      };

  private Optional<Entry> entry(long number) {
    return moment.entries().stream().filter(x -> x.number() == number).findFirst();
  }

  private String was(long number) {
    return entry(number).map(x -> words.event(x.event())).orElse("entry " + number);
  }

  private String now(Event.Corrected corrected) {
    String check =
        entry(corrected.event())
            .map(Entry::event)
            .filter(Event.Answered.class::isInstance)
            .map(e -> ((Event.Answered) e).check())
            .orElse("");
    return words.answer(check, corrected.answer());
  }
}
