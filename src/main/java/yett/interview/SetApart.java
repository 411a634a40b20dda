package yett.interview;

/**
 * An event that is kept in its case and left out of the reasoning, because the reasoning fails with
 * it: it was written by another version of the program, damaged, or the program has a mistake.
 *
 * @param why what failed, in words
 */
public record SetApart(Entry entry, String why) {}
