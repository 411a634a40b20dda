/** Assembles the commands and runs them in a shell. */
package yett.command;
