/**
 * A sliding gate as physics: it knows parts and forces, and nothing of how likely cards say things
 * are.
 */
package yett.study.gate;
