/**
 * Talks with a person on a terminal or through a pipe: shows blocks of text and reads cleaned
 * lines.
 */
package yett.console;
