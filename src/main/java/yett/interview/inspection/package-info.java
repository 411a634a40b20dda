/** An inspection: which checks belong to it, in what order they are made, and how it stands. */
package yett.interview.inspection;
