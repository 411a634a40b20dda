package yett.worksheet.chain;

import java.util.List;
import yett.worksheet.Worksheet;

/** The calculations about the chain and its wheels. */
public final class ChainWorksheets {
  public static final List<Worksheet> ALL =
      List.of(
          new ChainSagSheet(),
          new ChainAllowance(),
          new ChainTakeUp(),
          new ChainLinks(),
          new ChainElongationSheet(),
          new ChainLoadSheet(),
          new SprocketAlignmentSheet());

  private ChainWorksheets() {}
}
