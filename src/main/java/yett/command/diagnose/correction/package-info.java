/**
 * Earlier answers that are given again, taken back, or looked at once more because they disagree.
 */
package yett.command.diagnose.correction;
