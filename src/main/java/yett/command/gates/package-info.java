/** {@code gates}: gates with their history. */
package yett.command.gates;
