/** Stores every case as an append-only list of events, and every site with all its revisions. */
package yett.casebook;
