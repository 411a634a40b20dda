/** Finds what a caller's own words mean in the terms of the cards. */
package yett.saying;
