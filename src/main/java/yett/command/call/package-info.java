/** Telephone calls: what is read out to the caller, and who is sent. */
package yett.command.call;
