/** The commands, put together, and the shell that runs them. */
package yett.command;
