/**
 * What a person tells without being asked: answers, readings, complaints, dangers, and that the
 * gate works again. It is shown back, and counts once it is confirmed.
 */
package yett.command.diagnose.told;
