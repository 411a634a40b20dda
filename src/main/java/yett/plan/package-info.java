/** Chooses the next check or repair by the expected cost until the gate is back in service. */
package yett.plan;
