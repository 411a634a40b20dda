/** Dispatch after a call: how urgent the visit is, what it is for, and what to put in the van. */
package yett.dispatch;
