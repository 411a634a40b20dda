package yett.command.cases;

import yett.casebook.CarriedCase;
import yett.casebook.CarriedSite;
import yett.casebook.CarryFile;

/** Sees that a file can be read whole, before anything is taken in. */
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

  /** How many there are. */
  int cases() {
    return cases;
  }
}
