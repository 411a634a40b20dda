package yett.practice;

/**
 * Something that would have been dangerous; it was not done.
 *
 * @param minute of the exercise
 * @param what was about to be done
 * @param why it is dangerous
 */
public record Slip(double minute, String what, String why) {}
