package yett.record.handout;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.interview.event.Event;
import yett.interview.state.CaseState;
import yett.wording.Wording;

/** The notes that the customer is to read. All others are for the next technician and the desk. */
final class CustomerNotes {
  private static final Pattern BEGINNING =
      Pattern.compile("(?is)for (?:the )?customer\\s*[:,]?\\s+(.+)");

  private CustomerNotes() {}

  static List<String> of(CaseState state) {
    return state.notes().stream()
        .map(e -> BEGINNING.matcher(((Event.Noted) e.event()).text().strip()))
        .filter(Matcher::matches)
        .map(m -> Wording.capital(m.group(1)))
        .toList();
  }
}
