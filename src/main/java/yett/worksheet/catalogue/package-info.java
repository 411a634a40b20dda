/** All calculations that a person can ask for. */
package yett.worksheet.catalogue;
