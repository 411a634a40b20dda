/**
 * Writes and reads files safely: readable by their owner only if they contain data about people,
 * and never written by half.
 */
package yett.files;
