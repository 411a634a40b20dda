package yett.practice.course;

import java.util.List;
import yett.knowledge.Role;

/**
 * Exercises that several people do, each on a computer of their own.
 *
 * @param id names it in results
 * @param role whose work is practised
 * @param trainees by name; results of nobody else count
 */
public record Course(String id, String title, Role role, List<String> trainees, List<Task> tasks) {

  /**
   * One exercise: drawn from the cards, or a test case.
   *
   * @param area and level as wanted; empty for any, and for a test case
   * @param file of the test case, whole; empty if the exercise is drawn
   * @param name of the test case
   */
  public record Task(String area, String level, long seed, String file, String name) {}
}
