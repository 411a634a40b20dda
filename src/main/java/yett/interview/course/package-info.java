/**
 * Leads a case from its first event to its closing: {@link yett.interview.course.NextStep} has the
 * fixed order of dangers, site, complaint, search and proofs. A change to what comes before what
 * belongs here.
 */
package yett.interview.course;
