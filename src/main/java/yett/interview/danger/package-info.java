/** Dangers: asked about and made safe before all other work, and what was said of them. */
package yett.interview.danger;
