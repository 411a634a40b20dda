package yett.command.practice;

import java.util.List;
import java.util.Locale;
import yett.command.common.UsageException;
import yett.command.common.Words;
import yett.desk.Desk;
import yett.knowledge.Names;
import yett.knowledge.Role;
import yett.practice.Exercises;
import yett.practice.Level;

/** What is asked for on the command line: an exercise that can be had. */
record ExerciseOptions(Desk desk) {
  /** What was asked for on the command line. */
  record Wanted(List<String> files, String name, String area, String level, Role role, long seed) {}

  /**
   * Sees that what was asked for can be had; what was not said is empty.
   *
   * @throws UsageException if it cannot
   */
  Wanted wanted(
      List<String> files, String name, String area, String level, Role role, String seed) {
    if (role == Role.CALLER) {
      throw new UsageException("A caller does not work on a gate. " + PracticeCommands.PRACTICE);
    }
    String ofLevel = level.toLowerCase(Locale.ROOT);
    if (!ofLevel.isEmpty() && !Level.words().contains(ofLevel)) {
      throw new UsageException(
          Words.quoted(ofLevel) + " is not a level. " + Names.advice(ofLevel, Level.words()));
    }
    String ofArea = area.toLowerCase(Locale.ROOT);
    List<String> areas = new Exercises(desk.trial()).areas();
    if (!ofArea.isEmpty() && !areas.contains(ofArea)) {
      throw new UsageException(
          "There is no area " + Words.quoted(ofArea) + ". " + Names.advice(ofArea, areas));
    }
    if (!files.isEmpty() && !(ofArea + ofLevel).isEmpty()) {
      throw new UsageException(
          "A test case has its own area and level: leave out --area and --level, or the files.");
    }
    return new Wanted(files, name, ofArea, ofLevel, role, seed(seed));
  }

  private long seed(String typed) {
    if (typed.isEmpty()) {
      return desk.clock().instant().toEpochMilli() % 1_000_000;
    }
    try {
      return Long.parseLong(typed.strip());
    } catch (NumberFormatException e) {
      throw new UsageException(
          Words.quoted(typed) + " is not a seed: give a whole number, such as 4711.");
    }
  }
}
