/** Drawings for the record: the gate to scale, forces, trends, and how the suspicion changed. */
package yett.record.drawing;
