/**
 * Commands that list, search, show, carry and repair the cases of the casebook, and that write
 * their records.
 */
package yett.command.cases;
