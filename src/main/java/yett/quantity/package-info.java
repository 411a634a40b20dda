/** Readings as people type them: quantities, units, and how a typed line becomes a number. */
package yett.quantity;
