/** Calculations about the wires that feed a gate, and the setting of its supply. */
package yett.worksheet.feeder;
