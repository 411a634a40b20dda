package yett.worksheet.duty;

import static yett.worksheet.Tell.metres;
import static yett.worksheet.Tell.percent;
import static yett.worksheet.Tell.tell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Entries;
import yett.worksheet.Input;
import yett.worksheet.InputException;
import yett.worksheet.Meaning;
import yett.worksheet.Note;
import yett.worksheet.Output;
import yett.worksheet.Results;
import yett.worksheet.Subject;
import yett.worksheet.Worksheet;

/** Those about how hard an operator is worked. */
public final class DutyWorksheets {
  public static final List<Worksheet> ALL = List.of(new DutyCycles(), new DutyHeat());

  private DutyWorksheets() {}
}
