/**
 * The gate as installed: reads the lines that describe it, and shows what is known of it. When the
 * gate is asked about is decided in {@code intake}.
 */
package yett.command.diagnose.site;
