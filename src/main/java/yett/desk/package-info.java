/**
 * The application: cases are opened, answered, undone, merged, delivered and resumed here, and what
 * is known of a gate is kept. It knows no screen.
 */
package yett.desk;
