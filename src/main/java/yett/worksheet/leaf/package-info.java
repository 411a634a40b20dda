/** Calculations about the moving leaf. */
package yett.worksheet.leaf;
