/** Yett and simple policies over the same simulated faults; see docs/study.md. */
package yett.study;
