/** Calculations about the load of an operator over time. */
package yett.worksheet.duty;
