/** A round of looks at one place of the gate: shows it, and reads the line typed at it. */
package yett.command.diagnose.look;
