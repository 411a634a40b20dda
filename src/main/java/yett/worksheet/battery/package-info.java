/** Calculations about batteries, their chargers and solar panels. */
package yett.worksheet.battery;
