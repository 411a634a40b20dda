/** The interview at a console: {@code diagnose} and {@code resume}. */
package yett.command.diagnose;
