/**
 * Exercises on an invented gate: what is wrong with it, what it shows, what a trainee does to it,
 * and how that compares with the plan.
 */
package yett.practice;
