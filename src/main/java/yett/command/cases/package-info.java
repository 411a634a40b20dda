/** The casebook: cases listed, found, shown, carried and mended, and their records. */
package yett.command.cases;
