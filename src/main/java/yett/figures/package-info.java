/** Statistics over many closed cases: what fails, where, how often, and how the work went. */
package yett.figures;
