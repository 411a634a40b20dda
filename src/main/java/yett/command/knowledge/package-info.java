/** The trainer's bench: rule bases checked, tried and extended. */
package yett.command.knowledge;
