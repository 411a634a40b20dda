/** Tests the program as a person uses it, at a terminal or through a pipe. */
package yett.e2e;
