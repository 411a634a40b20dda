/** How much a shared casebook bears; not part of the tests. */
package yett.load;
