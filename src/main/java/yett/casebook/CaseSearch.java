package yett.casebook;

import java.time.Instant;
import java.util.Optional;

/**
 * Which cases are sought; all that is given must be so.
 *
 * @param site part of a gate's name, in whatever capitals and signs
 * @param causes ids of causes, one of which was believed most when the case was last written to;
 *     empty for any
 * @param text stands somewhere in the title or in an event, in whatever capitals
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

  /** Whether a line in the list is sought, as far as it tells. */
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
