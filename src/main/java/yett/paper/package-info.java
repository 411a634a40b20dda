/** Pages to print: HTML, drawings in it, and PDF made of it. Knows no gates. */
package yett.paper;
