/**
 * Leads a person through the steps of a case or an inspection until it is closed or left. Each kind
 * of step is handed to the package that handles it.
 */
package yett.command.diagnose.conversation;
