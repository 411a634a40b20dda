/**
 * What is asked before any check: the gate as installed, the complaints, and what happened lately.
 * Other details of the gate are asked when a step first depends on them.
 */
package yett.command.diagnose.intake;
