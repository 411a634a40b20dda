/** The papers that are handed out: a page for the customer and one for the next technician. */
package yett.record.handout;
