/**
 * What the person is asked or told next, with the reason for it. The steps are data; other packages
 * choose them.
 */
package yett.interview.step;
