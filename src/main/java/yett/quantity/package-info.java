/** Readings as people type them: quantities, units, and the way from a typed line to a number. */
package yett.quantity;
