/**
 * The proofs that a gate must pass before it goes back into use, and what follows when one fails.
 */
package yett.interview.proof;
