/** {@code gates}: commands for gates and their history. */
package yett.command.gates;
