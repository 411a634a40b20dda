/**
 * Code that the packages of commands share: prompts, choices from lists, names, help and exit
 * statuses.
 */
package yett.command.common;
