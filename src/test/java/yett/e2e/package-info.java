/** The program as a person meets it: at a terminal, or through a pipe. */
package yett.e2e;
