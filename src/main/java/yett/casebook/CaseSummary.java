package yett.casebook;

import java.time.Instant;

/**
 * One line in the list of cases.
 *
 * @param siteId the gate it is about; the site itself may not have been saved yet
 * @param lastEvent when the last event happened, or the opening if there is none yet
 * @param lastSeq the number of the last event, 0 if there is none yet
 */
public record CaseSummary(
    CaseId id, String siteId, Instant opened, Instant lastEvent, long lastSeq, Summary summary) {}
