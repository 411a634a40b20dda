/**
 * Practice on a gate that is made up: what is wrong with it, what it shows, what a trainee does at
 * it, and how that compares with the plan.
 */
package yett.practice;
