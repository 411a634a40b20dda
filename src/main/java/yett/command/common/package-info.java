/** What every command works with. */
package yett.command.common;
