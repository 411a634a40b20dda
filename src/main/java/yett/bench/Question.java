package yett.bench;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A question that a new card needs answered.
 *
 * @param key its name in answers given as {@code key=value}
 * @param before lines that help to answer it
 * @param ask the question in one line
 * @param known what an answer, or a part of it, may name; empty if it is in the author's own words
 * @param usual taken if the answer is empty; empty if an answer is necessary
 * @param complaint says what is wrong with an answer
 * @param told what an answer is taken to mean, in lines; empty if the answer says it all
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

  /** A question for words that must not be empty. */
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

  /** The same question, to which this word is an answer too. */
  Question allowing(String word) {
    return new Question(
        key,
        before,
        ask,
        known,
        usual,
        given -> given.equals(word) ? Optional.empty() : complaint.apply(given),
        told);
  }

  /**
   * The same question with an answer that must not be empty.
   *
   * @param complaint shown for an empty one
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

  /** The same question, with what an answer is taken to mean. */
  Question telling(Function<String, List<String>> meaning) {
    return new Question(key, before, ask, known, usual, complaint, meaning);
  }

  /** The same question with another key. */
  Question called(String otherKey) {
    return new Question(otherKey, before, ask, known, usual, complaint, told);
  }

  /** Whether an empty answer is allowed. */
  public boolean mayBeNothing() {
    return usual.equals(Optional.of(""));
  }
}
