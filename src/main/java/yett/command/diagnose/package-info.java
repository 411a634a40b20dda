/**
 * The commands of the interview at a console: {@code diagnose}, {@code resume} and {@code inspect}.
 * What they lead to is in the packages inside this one, from {@code opening} and {@code
 * conversation} down to {@code sitting} and {@code screen}.
 */
package yett.command.diagnose;
