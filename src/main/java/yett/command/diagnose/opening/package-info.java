/**
 * How a case is begun or gone on with: which gate, which open case or inspection, whose work, and
 * what earlier visits left to do.
 */
package yett.command.diagnose.opening;
