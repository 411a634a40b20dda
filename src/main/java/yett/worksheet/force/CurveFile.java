package yett.worksheet.force;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import yett.calculation.ForceCurve;
import yett.calculation.ForceRecord;
import yett.calculation.ForceRecordException;
import yett.worksheet.InputException;

/** Reads the file of a force meter. */
public final class CurveFile {
  /** Largest file (bytes); a record of 5 s has some ten thousand. */
  private static final long LARGEST = 5_000_000;

  private CurveFile() {}

  /**
   * The curve in a file.
   *
   * @throws InputException if there is no such file or no curve in it; the message names line and
   *     column
   */
  public static ForceCurve read(String typed) {
    Path file = path(typed);
    String name = file.getFileName() == null ? typed : file.getFileName().toString();
    try {
      if (!Files.exists(file)) {
        throw new InputException(
            "There is no file \"" + typed + "\". Check the folder and the spelling.");
      }
      if (!Files.isRegularFile(file)) {
        throw new InputException(
            "\"" + typed + "\" is not a file. Name the CSV file of the meter.");
      }
      if (Files.size(file) > LARGEST) {
        throw new InputException(
            name + " is too large for one record; name a meter's CSV file of one impact.");
      }
      return ForceRecord.read(name, Files.readAllLines(file, StandardCharsets.UTF_8));
    } catch (ForceRecordException e) {
      throw new InputException(e.getMessage());
    } catch (MalformedInputException e) {
      throw new InputException(
          name + " is not UTF-8 text. Save it as CSV, not as a workbook, and in UTF-8.");
    } catch (IOException e) {
      throw new InputException(name + " cannot be read. Check that you have the right to read it.");
    }
  }

  private static Path path(String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException e) {
      throw new InputException("\"" + typed + "\" is not a file name here.");
    }
  }
}
