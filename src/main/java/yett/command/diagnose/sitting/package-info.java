/**
 * A person at a console with an open case: lines read and shown, choices offered, and what is heard
 * at every prompt. All other parts of the dialogue stand on this one.
 */
package yett.command.diagnose.sitting;
