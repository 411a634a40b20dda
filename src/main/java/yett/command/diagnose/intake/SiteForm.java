package yett.command.diagnose.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.site.SiteEntry;
import yett.command.diagnose.site.SiteViews;
import yett.command.diagnose.sitting.Sitting;
import yett.interview.event.Event;
import yett.interview.step.Step;
import yett.knowledge.SiteQuestion;
import yett.wording.GateWords;

/**
 * Asks about the gate as installed. The first page shows what is known of it and what tells it from
 * others; other details are asked when a step first depends on them. Every changed line is stored
 * as soon as it is typed.
 */
public final class SiteForm {
  /** Up to this many lines are shown together, without leaving any out. */
  private static final int FEW = 8;

  private final Sitting sitting;
  private final PromptRequests wishes;
  private final Map<String, String> known;
  private final SiteEntry entry;

  /**
   * @param known answers kept from an earlier case at this gate
   */
  public SiteForm(Sitting sitting, PromptRequests wishes, Map<String, String> known) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.known = known;
    this.entry = new SiteEntry(sitting);
  }

  /** Shows the page until it is accepted or a request leads elsewhere. */
  public void fill() {
    take(known);
    boolean every = sitting.moment().state().isInspection() || entry.questions().size() <= FEW;
    boolean all = every;
    List<SiteQuestion> shown = List.of();
    while (sitting.moment().step() instanceof Step.AskSite) {
      List<SiteQuestion> page = all ? entry.questions() : first();
      if (!page.equals(shown)) {
        show(page, all && !every);
        shown = page;
      }
      String line = sitting.line("Enter if all is right, or type what differs (? shows all)");
      if (line.isBlank()) {
        // Whoever looks at all of them has not told them: what is not asked stays assumed.
        List<Event> events = new ArrayList<>(entry.asUsual(every ? page : first()));
        events.add(new Event.SiteTaken());
        sitting.record(events.toArray(Event[]::new));
      } else if (line.strip().equals("?")) {
        all = true;
        shown = List.of();
      } else if (wishes.grant(line)) {
        shown = List.of(); // its output has pushed the page off the window
      } else if (entry.change(line, page)) {
        continue;
      } else if (wishes.volunteered().hear(line)) {
        shown = List.of();
      } else {
        sitting.say(
            "Type what differs (6 m, no loops, 120 V), a number from 1 to "
                + page.size()
                + ", or just press Enter.");
      }
    }
  }

  /**
   * @param list whether every question is shown, a line each, and a page at a time
   */
  private void show(List<SiteQuestion> page, boolean list) {
    if (list) {
      entry.list(page);
    } else {
      List<SiteQuestion> rest = entry.questions().stream().filter(q -> !page.contains(q)).toList();
      sitting.show(entry.views().page(page, entry.answers(), rest));
    }
  }

  /**
   * The questions of the first page: answers that differ from the usual, and what tells this gate
   * from others.
   */
  private List<SiteQuestion> first() {
    return entry.questions().stream()
        .filter(q -> SiteViews.matters(q, entry.answers()) || GateWords.tells(q))
        .toList();
  }

  /** Takes over known answers that were not given differently in this case. */
  private void take(Map<String, String> known) {
    Event[] news =
        known.entrySet().stream()
            .filter(e -> sitting.base().siteQuestions().containsKey(e.getKey()))
            .filter(e -> !entry.answers().containsKey(e.getKey()))
            .map(e -> new Event.SiteAnswered(e.getKey(), e.getValue()))
            .toArray(Event[]::new);
    if (news.length > 0) {
      sitting.record(news);
    }
  }
}
