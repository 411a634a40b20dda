/** Applies the rules (DRL) to the answers and the site. The only package that uses Drools. */
package yett.rules;
