/** Practice on gates that are made up. */
package yett.command.practice;
