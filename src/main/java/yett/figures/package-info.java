/** What many closed cases tell together: what fails, where, how often, and how the work went. */
package yett.figures;
