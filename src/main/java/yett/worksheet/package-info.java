/**
 * Calculations as a person fills them in: inputs with units, results with uncertainty, and what
 * they mean at the gate.
 */
package yett.worksheet;
