/** What tests of several packages need. */
package yett.testing;
