/** {@code practice}: exercises on invented gates. */
package yett.command.practice;
