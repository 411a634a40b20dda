/** Compares sentences by their meaning, whatever their words. Knows nothing of gates. */
package yett.meaning;
