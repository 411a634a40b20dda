/** Calculations about the force at an obstruction. */
package yett.worksheet.force;
