/** The rule base as data: cards are read from YAML, checked, and provided as records. */
package yett.knowledge;
