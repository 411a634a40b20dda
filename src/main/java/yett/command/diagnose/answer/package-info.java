/**
 * What a typed answer or reading means. A reading may wander, have two columns or come from a force
 * meter; one that is unlikely, too good or in the wrong unit is asked about before it counts.
 */
package yett.command.diagnose.answer;
