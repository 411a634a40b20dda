/** The arithmetic of the trade: chains, leaves, batteries, wires, supplies and uncertainty. */
package yett.calculation;
