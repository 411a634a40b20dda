/**
 * The application: opens, answers, undoes, merges, delivers and resumes cases, and keeps what is
 * known of a gate. It knows nothing of screens.
 */
package yett.desk;
