/**
 * The gate as it is installed: what is asked about it, when, and how its readings have changed over
 * the years.
 */
package yett.interview.site;
