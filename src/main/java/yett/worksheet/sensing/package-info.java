/** Calculations about vehicle loops, photo-beams and contact edges. */
package yett.worksheet.sensing;
