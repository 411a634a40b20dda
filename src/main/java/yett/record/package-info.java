/** Case records and hand-over sheets as Markdown, from a case as it stands. */
package yett.record;
