/** What a trainer works with: a rule base checked as it is written, new cards, weak places. */
package yett.bench;
