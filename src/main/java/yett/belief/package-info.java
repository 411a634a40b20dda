/** Probability over sets of causes: the mathematics of belief, without cards, rules or screens. */
package yett.belief;
