package yett.worksheet;

/**
 * One of the things that an input may be.
 *
 * @param id what is typed in one word, such as {@code awg-12}
 * @param words what is read, such as {@code 12 AWG}; may be typed as well
 */
public record Choice(String id, String words) {}
