package yett.practice;

/**
 * Something dangerous that a trainee wanted to do; it was refused.
 *
 * @param minute of the exercise
 * @param what the trainee was about to do
 * @param why it is dangerous
 */
public record Slip(double minute, String what, String why) {}
