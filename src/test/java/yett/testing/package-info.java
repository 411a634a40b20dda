/** Support for the tests of several packages. */
package yett.testing;
