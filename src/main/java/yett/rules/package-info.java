/** What the rules (DRL) make of the answers on this site; the only place that knows Drools. */
package yett.rules;
