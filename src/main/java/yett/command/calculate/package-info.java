/** {@code calculate}: the calculations of the trade on a screen and as JSON. */
package yett.command.calculate;
