/** Commands and screens: where a person meets the interview. */
package yett.shell;
