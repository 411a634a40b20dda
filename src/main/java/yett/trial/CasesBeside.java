package yett.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.replay.CaseFile;
import yett.replay.RecordedCase;

/**
 * The test cases stored next to the cards of a rule base.
 *
 * @param problems of files that cannot be used; none of their cases is included
 * @param skipped cases that name cards that an add-on has switched off, each with its file
 */
public record CasesBeside(List<RecordedCase> cases, List<Problem> problems, List<String> skipped) {

  /**
   * @param files of the rule base, by path
   * @param only beginning of a path, or of the name of a case; empty for all. In an add-on its id
   *     may stand for its folder
   */
  public static CasesBeside of(SortedMap<String, String> files, RuleBase base, String only) {
    List<RecordedCase> cases = new ArrayList<>();
    List<Problem> problems = new ArrayList<>();
    List<String> skipped = new ArrayList<>();
    for (Map.Entry<String, String> file : files.entrySet()) {
      if (file.getKey().matches(".*\\.case\\.(yaml|yml|json)")) {
        CaseFile read = CaseFile.read(file.getKey(), file.getValue(), base);
        boolean part =
            file.getKey().startsWith(only) || RuleFiles.name(base, file.getKey()).startsWith(only);
        read.cases().stream().filter(c -> part || c.name().startsWith(only)).forEach(cases::add);
        read.off().stream()
            .filter(name -> part || name.startsWith(only))
            .forEach(name -> skipped.add(name + " (" + file.getKey() + ")"));
        if (part && !read.speaksOfWhatIsOff(base)) {
          problems.addAll(read.problems());
        }
      }
    }
    return new CasesBeside(List.copyOf(cases), List.copyOf(problems), List.copyOf(skipped));
  }

  /** The same cases under names of their files that two copies of an add-on have in common. */
  public CasesBeside byAddOn(RuleBase base) {
    return new CasesBeside(
        cases.stream().map(c -> c.inFile(RuleFiles.name(base, c.file()))).toList(),
        problems,
        skipped);
  }

  CasesBeside without(Set<Account.Key> some) {
    return new CasesBeside(
        cases.stream().filter(c -> !some.contains(Account.Key.of(c))).toList(), problems, skipped);
  }
}
