/**
 * What a technician is sent out with after a call: how urgent, what for, and with what in the van.
 */
package yett.dispatch;
