/**
 * The list of dangers, asked before anything else: what is said at it is searched for dangers, and
 * a child is asked in plain words.
 */
package yett.command.diagnose.danger;
