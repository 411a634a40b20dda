package yett.command.cases;

import yett.casebook.CarriedCase;
import yett.casebook.CarriedSite;
import yett.casebook.CarryFile;

/** Reads a file to the end without importing anything, to check that all of it can be read. */
final class ImportRehearsal implements CarryFile.Reader {
  private int cases;
  private int told;

  @Override
  public void head(int cases, int sites) {
    told = cases;
  }

  @Override
  public void site(CarriedSite site) {}

  @Override
  public void carried(CarriedCase carried) {
    cases++;
    if (cases > told) {
      throw new IllegalArgumentException("there are more cases than the first line says.");
    }
  }

  /** How many cases the file has. */
  int cases() {
    return cases;
  }
}
