/** How near sentences are in meaning, whatever their words; knows no gates. */
package yett.meaning;
