package yett.command.diagnose.intake;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import yett.command.common.Words;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.site.SiteEntry;
import yett.command.diagnose.sitting.Sitting;
import yett.command.diagnose.told.AboutAsked;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.site.SiteNeeds;
import yett.knowledge.SiteQuestion;

/** Asks for a detail of the gate when a step first depends on it. Enter takes the usual answer. */
public final class SiteAsNeeded {
  private static final Set<Words.Wish> CANNOT = Set.of(Words.Wish.UNKNOWN, Words.Wish.LATER);

  private static final Set<String> YES = Set.of("yes", "y", "right", "ok");

  private final Sitting sitting;
  private final PromptRequests wishes;
  private final SiteEntry entry;

  /**
   * Ids of the questions that nobody here can answer. The usual answer is assumed, and they are not
   * asked again.
   */
  private final Set<String> untold = new HashSet<>();

  public SiteAsNeeded(Sitting sitting, PromptRequests wishes) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.entry = new SiteEntry(sitting);
  }

  /**
   * Asks for the details that the next step depends on and nobody has given yet.
   *
   * @return whether anything was asked, so that the case has to be looked at again
   */
  public boolean asked() {
    Moment before = sitting.moment();
    List<SiteQuestion> open = open();
    List<SiteQuestion> shown = List.of();
    boolean asks = !open.isEmpty();
    while (!open.isEmpty()) {
      if (!open.equals(shown)) {
        sitting.show(entry.views().needed(sitting.moment().step(), open, entry.answers()));
        shown = open;
      }
      String line = sitting.line("Enter if this is right, or type what differs");
      if (line.isBlank() || YES.contains(line.strip().toLowerCase(Locale.ROOT))) {
        sitting.record(entry.asUsual(open).toArray(Event[]::new));
      } else if (Words.wish(line).filter(CANNOT::contains).isPresent()) {
        open.forEach(q -> untold.add(q.id()));
      } else if (entry.change(line, open)) {
        before = sitting.moment();
      } else if (wishes.grantOrHear(about(line, open))) {
        if (sitting.moment() != before) {
          return true;
        }
      } else {
        sitting.say("Type what differs, such as " + example(open) + ", or just press Enter.");
      }
      open = open();
    }
    return asks;
  }

  /** What "it" is, is said by the only detail that is shown. */
  private static String about(String line, List<SiteQuestion> open) {
    return open.size() == 1 && AboutAsked.isOfIt(line)
        ? AboutAsked.named(open.get(0).name(), line)
        : line;
  }

  private static String example(List<SiteQuestion> open) {
    SiteQuestion one = open.get(0);
    return one.measures().map(m -> one.usual()).orElse(one.said(one.usual()));
  }

  private List<SiteQuestion> open() {
    return new SiteNeeds(sitting.base(), sitting.moment())
        .open().stream().filter(q -> !untold.contains(q.id())).toList();
  }
}
