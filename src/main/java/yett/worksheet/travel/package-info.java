/** Calculations about travel, limits and the reference marker. */
package yett.worksheet.travel;
