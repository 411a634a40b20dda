/**
 * Questions, and the requests that work at each of them: {@code why}, {@code back}, {@code danger},
 * the endings of a call and others.
 */
package yett.command.diagnose.question;
