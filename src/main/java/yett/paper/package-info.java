/** Pages to print: HTML with drawings, and PDF made from it. Knows nothing of gates. */
package yett.paper;
