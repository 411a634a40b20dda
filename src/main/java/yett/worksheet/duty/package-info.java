/** Calculations about how hard an operator is worked. */
package yett.worksheet.duty;
