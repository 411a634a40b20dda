package yett.bench;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/** A card to be written from answers. What is asked next may depend on what was answered. */
public interface NewCard {

  /** All questions that these answers lead to, in their order, answered ones among them. */
  List<Question> questions(Map<String, String> answers);

  /**
   * Every question that may come, for who wants to know them before; those that come once for each
   * of something stand there once, under a key in capitals.
   */
  default List<Question> outline() {
    return questions(Map.of());
  }

  /**
   * The files to be written, by path.
   *
   * @param answers to every question
   */
  SortedMap<String, String> files(Map<String, String> answers);
}
