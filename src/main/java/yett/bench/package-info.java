/**
 * Tools for trainers: checks a rule base as it is written, asks for new cards, and finds weak
 * places.
 */
package yett.bench;
