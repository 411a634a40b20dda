/** Calls: what is read out to somebody on the telephone, and who is sent. */
package yett.command.call;
