/** A class that practises: a course of exercises, its papers, and how all of them got on. */
package yett.practice.course;
