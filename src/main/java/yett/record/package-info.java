/**
 * Case records, hand-over sheets and dispatch sheets as Markdown, written from the present state of
 * a case.
 */
package yett.record;
