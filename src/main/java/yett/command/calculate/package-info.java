/** Calculations of the trade. */
package yett.command.calculate;
