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

/** Reads from the command line which exercise is wanted, and checks that it is possible. */
record ExerciseOptions(Desk desk) {
  /** What was asked for on the command line. */
  record Wanted(List<String> files, String name, String area, String level, Role role, long seed) {}

  /**
   * Checks the options; what was not given is empty.
   *
   * @throws UsageException if there is no such exercise
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
