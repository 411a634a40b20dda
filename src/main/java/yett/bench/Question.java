package yett.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * One thing that a new card needs to know.
 *
 * @param key names it where answers are given as {@code key=value}
 * @param before lines that help to answer it
 * @param ask the question in a line
 * @param known what an answer, or a part of it, may name; empty where it is in one's own words
 * @param usual taken when nothing is answered; empty if something must be
 * @param complaint says what is wrong with an answer
 * @param told what an answer is taken to mean, in lines; nothing where it says it all
 */
public record Question(
    String key,
    List<String> before,
    String ask,
    List<Candidate> known,
    Optional<String> usual,
    Function<String, Optional<String>> complaint,
    Function<String, List<String>> told) {

  static Question of(String key, String ask, Function<String, Optional<String>> complaint) {
    return new Question(
        key, List.of(), ask, List.of(), Optional.empty(), complaint, answer -> List.of());
  }

  /** Words that must not be empty. */
  static Question words(String key, String ask) {
    return of(
        key,
        ask,
        answer -> answer.isBlank() ? Optional.of("Write a few words.") : Optional.empty());
  }

  Question usual(String answer) {
    return new Question(
        key,
        before,
        ask,
        known,
        Optional.of(answer),
        given -> given.equals(answer) ? Optional.empty() : complaint.apply(given),
        told);
  }

  /**
   * The same, with an answer that must not be empty.
   *
   * @param complaint told of one that is
   */
  Question needed(String complaint) {
    return new Question(
        key,
        before,
        ask,
        known,
        Optional.empty(),
        given -> given.isBlank() ? Optional.of(complaint) : this.complaint.apply(given),
        told);
  }

  Question naming(List<Candidate> things) {
    return new Question(key, before, ask, things, usual, complaint, told);
  }

  Question after(List<String> lines) {
    return new Question(key, lines, ask, known, usual, complaint, told);
  }

  /** The same, with what an answer is taken to mean. */
  Question telling(Function<String, List<String>> meaning) {
    return new Question(key, before, ask, known, usual, complaint, meaning);
  }

  /** The same under another name. */
  Question called(String otherKey) {
    return new Question(otherKey, before, ask, known, usual, complaint, told);
  }

  /** Whether nothing is an answer. */
  public boolean mayBeNothing() {
    return usual.equals(Optional.of(""));
  }
}
