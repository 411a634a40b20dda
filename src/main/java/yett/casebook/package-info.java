/** Keeps every case as an append-only list of events, and every site as it was last described. */
package yett.casebook;
