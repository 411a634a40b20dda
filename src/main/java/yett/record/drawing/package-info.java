/** A gate drawn to scale from what is known of it, and how a suspicion moved. */
package yett.record.drawing;
