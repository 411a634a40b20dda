/**
 * What the answers of a case say about its causes: the belief, its history, answers that hardly fit
 * together, and chances in words.
 */
package yett.interview.evidence;
