package yett.command.cases;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.casebook.CarriedCase;
import yett.casebook.CarriedSite;
import yett.casebook.CarryFile;
import yett.casebook.Casebook;
import yett.casebook.ImportedCase;
import yett.console.Block;
import yett.console.Console;
import yett.console.Progress;
import yett.desk.Desk;
import yett.desk.ImportCheck;
import yett.desk.TwoCourses;

/** Imports cases from a file that another casebook exported. */
final class CaseImport implements CarryFile.Reader {

  private final Desk desk;
  private final Console console;
  private final Casebook casebook;
  private final boolean apart;
  private final ImportCheck sense;
  private Progress progress;
  private final List<Block> blocks = new ArrayList<>();
  private int told;
  private int read;
  private int fresh;
  private int continued;
  private int left;
  private boolean conflicts;

  /**
   * @param apart whether a case that went on differently elsewhere is imported as a separate case
   */
  CaseImport(Desk desk, Console console, boolean apart) {
    this.desk = desk;
    this.console = console;
    this.casebook = desk.casebook();
    this.apart = apart;
    this.sense = new ImportCheck(desk.base());
  }

  /**
   * Imports a file, after checking that all of it can be read, and shows the result.
   *
   * @return whether everything was imported
   */
  boolean read(Path file) {
    ImportRehearsal looked = new ImportRehearsal();
    CarryFile.read(file, looked);
    try (Progress shown = console.start("cases", looked.cases())) {
      progress = shown;
      CarryFile.read(file, this);
    }
    tell();
    return isWhole();
  }

  @Override
  public void head(int cases, int sites) {
    told = cases;
  }

  @Override
  public void site(CarriedSite site) {
    Optional<String> against = sense.against(site);
    if (against.isPresent()) {
      conflicts = true;
      blocks.add(
          Block.paragraph("What the file says about a gate was left out: " + against.get() + "."));
    } else if (!casebook.take(site)) {
      conflicts = true;
      blocks.add(
          Block.paragraph(
              "Gate "
                  + site.revisions().get(site.revisions().size() - 1).name()
                  + " was described differently here and elsewhere. The description here was kept."
                  + " Ask those who were there, and correct it in the next case."));
    }
  }

  @Override
  public void carried(CarriedCase carried) {
    read++;
    progress.step();
    Optional<String> against = sense.against(carried);
    if (against.isPresent()) {
      left++;
      blocks.add(
          Block.paragraph(
              "Case " + carried.id() + " of the file was left out: " + against.get() + "."));
    } else {
      take(carried);
    }
  }

  private void take(CarriedCase carried) {
    ImportedCase taken = casebook.take(carried);
    if (taken.outcome() == ImportedCase.Outcome.CONFLICT) {
      Optional<Integer> joined = TwoCourses.join(desk, carried, taken);
      if (joined.isPresent()) {
        tellJoined(taken, joined.get());
      } else if (apart) {
        ImportedCase own = casebook.takeApart(carried);
        blocks.add(
            Block.paragraph(
                "Case "
                    + taken.id()
                    + " was continued differently elsewhere: see "
                    + own.id()
                    + "."));
      } else {
        conflicts = true;
        blocks.addAll(new ConflictViews(desk.base()).of(carried, taken));
      }
    } else if (taken.outcome() == ImportedCase.Outcome.NEW) {
      fresh++;
      if (!taken.id().equals(carried.id())) {
        blocks.add(
            Block.paragraph("Case " + carried.id() + " of the file is " + taken.id() + " here."));
      }
    } else if (taken.outcome() == ImportedCase.Outcome.CONTINUED) {
      continued++;
    }
  }

  private void tellJoined(ImportedCase taken, int added) {
    if (added > 0) {
      continued++;
      blocks.add(
          Block.paragraph(
              "Case "
                  + taken.id()
                  + " went on in both places, in one of them only with what the desk noted of the"
                  + " call. "
                  + (added == 1 ? "1 entry" : added + " entries")
                  + " of the file "
                  + (added == 1 ? "was" : "were")
                  + " added to what is here."));
    }
  }

  private boolean isWhole() {
    return !conflicts && left == 0 && read == told;
  }

  private void tell() {
    console.show(blocks);
    console.say(
        read
            + (read == 1 ? " case" : " cases")
            + " read: "
            + fresh
            + " new, "
            + continued
            + " continued, "
            + (left > 0 ? left + " left out, " : "")
            + "the others unchanged."
            + (left > 0
                ? " If what was left out was made with other cards, import it with those:"
                    + " --knowledge FOLDER, or --add-on FOLDER."
                : "")
            + (read < told
                ? " The first line says "
                    + told
                    + " cases: the file seems to be cut short. Export it again."
                : ""));
  }
}
