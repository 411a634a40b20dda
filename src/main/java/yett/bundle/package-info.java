/** Exchange of rule bases and add-ons as signed files, and the keys that show who signed them. */
package yett.bundle;
