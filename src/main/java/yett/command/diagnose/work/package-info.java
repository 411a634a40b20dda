/** The work at the gate: set-ups entered and left, repairs, and the try after them. */
package yett.command.diagnose.work;
