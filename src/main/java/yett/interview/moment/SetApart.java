package yett.interview.moment;

import yett.interview.event.Entry;

/**
 * An event that is kept in its case and left out of the reasoning, because the reasoning fails with
 * it. It may come from another version of the program or be damaged, or the program may have a
 * mistake.
 *
 * @param why what failed, in words
 */
public record SetApart(Entry entry, String why) {}
