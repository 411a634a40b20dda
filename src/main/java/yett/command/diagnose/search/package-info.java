/**
 * What a person chooses in the search for a fault: the check that comes next ({@code checks},
 * {@code ask}), and a cause to look at ({@code suspect}).
 */
package yett.command.diagnose.search;
