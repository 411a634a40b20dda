/** Rule bases and add-ons handed over in one signed file, and the keys that say whose they are. */
package yett.bundle;
