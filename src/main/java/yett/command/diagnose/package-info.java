/** The interview at a console: {@code diagnose}, {@code resume} and {@code inspect}. */
package yett.command.diagnose;
