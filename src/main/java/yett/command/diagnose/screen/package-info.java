/**
 * What is shown of a case: a step, a check, the belief and its reasons, cautions, the plan, and the
 * end of an inspection. These classes only make text of what they are given; they ask nothing.
 */
package yett.command.diagnose.screen;
