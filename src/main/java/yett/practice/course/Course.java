package yett.practice.course;

import java.util.List;
import yett.knowledge.Role;

/**
 * Exercises that several people do, each on their own computer.
 *
 * @param id names the course in results
 * @param role whose work is practised
 * @param trainees by name; other people's results do not count
 */
public record Course(String id, String title, Role role, List<String> trainees, List<Task> tasks) {

  /**
   * One exercise: drawn from the cards, or a test case.
   *
   * @param area and level as wanted; empty for any, and for a test case
   * @param file text of the file of the test case; empty if the exercise is drawn
   * @param name of the test case
   */
  public record Task(String area, String level, long seed, String file, String name) {}
}
