/** Talks with the person: blocks of text out, cleaned lines in, on a terminal or through a pipe. */
package yett.console;
