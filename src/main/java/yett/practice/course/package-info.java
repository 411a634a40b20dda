/** Practice for a class: a course of exercises, its papers, and the results of all trainees. */
package yett.practice.course;
