package yett.casebook;

import java.time.Instant;
import java.util.Optional;

/**
 * The criteria of a search for cases; all that are given must hold.
 *
 * @param site part of a gate's name, ignoring capitals and punctuation
 * @param causes ids of causes; the most believed cause of the case must be one of them when it was
 *     last written to. Empty for any
 * @param text must occur in the title or in an event, ignoring capitals
 * @param since opened then or later
 * @param until opened before
 */
public record CaseSearch(
    Optional<String> site,
    java.util.Set<String> causes,
    Optional<String> text,
    Optional<Instant> since,
    Optional<Instant> until,
    Optional<CaseStatus> state) {

  public CaseSearch {
    causes = java.util.Set.copyOf(causes);
  }

  /** Whether a line of the list meets the criteria that can be checked on it. */
  boolean fits(CaseSummary line) {
    return site.map(s -> named(line.siteId(), s)).orElse(true)
        && (causes.isEmpty() || causes.contains(line.summary().cause()))
        && since.map(s -> !line.opened().isBefore(s)).orElse(true)
        && until.map(u -> line.opened().isBefore(u)).orElse(true)
        && state.map(s -> line.summary().state() == s).orElse(true);
  }

  private static boolean named(String site, String sought) {
    String letters = SiteName.letters(sought);
    return letters.isEmpty() ? site.contains(sought) : SiteName.letters(site).contains(letters);
  }
}
