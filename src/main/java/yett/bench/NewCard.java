package yett.bench;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/** A card that is written from answers. Earlier answers may decide which questions follow. */
public interface NewCard {

  /**
   * All questions that follow from these answers, in their order, including those that are
   * answered.
   */
  List<Question> questions(Map<String, String> answers);

  /**
   * All questions that may be asked, for people who want to see them first. A question that is
   * asked once for each of several things is listed once, under a key in capitals.
   */
  default List<Question> outline() {
    return questions(Map.of());
  }

  /**
   * The files to write, by path.
   *
   * @param answers to every question
   */
  SortedMap<String, String> files(Map<String, String> answers);
}
