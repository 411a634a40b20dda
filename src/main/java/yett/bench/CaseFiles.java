package yett.bench;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.replay.CaseFile;

/**
 * Checks the case files next to the cards. A file is read again only when it, or the names that it
 * uses, have changed.
 */
final class CaseFiles {
  private record Read(String text, CaseFile file) {}

  private final Map<String, Read> kept = new HashMap<>();
  private Set<Object> names = Set.of();

  /**
   * Adds the problems of the case files.
   *
   * @return how many valid cases there are
   */
  int check(SortedMap<String, String> files, RuleBase base, List<Problem> problems) {
    Set<Object> now = names(base);
    if (!now.equals(names)) {
      kept.clear();
      names = now;
    }
    kept.keySet().retainAll(files.keySet());
    int count = 0;
    for (Map.Entry<String, String> file : files.entrySet()) {
      if (file.getKey().matches(".*\\.case\\.(yaml|yml|json)")) {
        CaseFile read = read(file.getKey(), file.getValue(), base);
        if (!read.speaksOfWhatIsOff(base)) {
          problems.addAll(read.problems());
        }
        count += read.cases().size();
      }
    }
    return count;
  }

  private CaseFile read(String name, String text, RuleBase base) {
    Read known = kept.get(name);
    if (known != null && known.text().equals(text)) {
      return known.file();
    }
    CaseFile file = CaseFile.read(name, text, base);
    kept.put(name, new Read(text, file));
    return file;
  }

  private record Answers(String check, List<String> outcomes, Measures measures) {}

  private record Choices(String site, Set<String> choices, Measures measures) {}

  /** Everything in a rule base that decides whether a case file is valid. */
  private static Set<Object> names(RuleBase base) {
    Set<Object> names = new HashSet<>();
    Stream.of(
            base.causes(),
            base.histories(),
            base.repairs(),
            base.stops(),
            base.telephone().pressing())
        .forEach(cards -> names.add(cards.keySet()));
    for (Check check : base.checks().values()) {
      List<String> outcomes = check.outcomes().stream().map(Check.Outcome::id).toList();
      names.add(new Answers(check.id(), outcomes, check.measures().orElse(null)));
    }
    for (SiteQuestion site : base.siteQuestions().values()) {
      names.add(new Choices(site.id(), site.choices().keySet(), site.measures().orElse(null)));
    }
    names.add(
        base.repairs().values().stream()
            .flatMap(r -> r.parts().stream())
            .map(p -> p.part())
            .collect(Collectors.toSet()));
    return names;
  }
}
