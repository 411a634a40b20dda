/** The rule base as data: cards read from YAML, checked, and handed on as records. */
package yett.knowledge;
