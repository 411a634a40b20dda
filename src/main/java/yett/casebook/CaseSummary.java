package yett.casebook;

import java.time.Instant;

/**
 * One line in the list of cases.
 *
 * @param siteId the gate it is about, which need not have been described yet
 * @param lastEvent time of the last event, or of the opening if there is none yet
 * @param lastSeq number of the last event, 0 if there is none yet
 */
public record CaseSummary(
    CaseId id, String siteId, Instant opened, Instant lastEvent, long lastSeq, Summary summary) {}
