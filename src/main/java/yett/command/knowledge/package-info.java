/** Commands for trainers: check, try and extend rule bases. */
package yett.command.knowledge;
