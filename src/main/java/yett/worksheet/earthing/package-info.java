/** Calculations about earth rods. */
package yett.worksheet.earthing;
