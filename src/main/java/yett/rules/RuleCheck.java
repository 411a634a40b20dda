package yett.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsError;
import org.drools.drl.parser.DroolsParserException;
import yett.knowledge.Problem;

/** Finds problems in files of rules (DRL) without running them. */
public final class RuleCheck {
  private RuleCheck() {}

  /** Checks the grammar of a file. Nothing is loaded or run. */
  public static List<Problem> grammar(String file, String text) {
    DrlParser parser = new DrlParser();
    RulePlaces places = new RulePlaces(text);
    List<Problem> problems = new ArrayList<>();
    try {
      parser.parse(false, text);
    } catch (DroolsParserException e) {
      problems.add(places.problem(file, e.getLineNumber(), e.getMessage()));
    }
    for (DroolsError error : parser.getErrors()) {
      int[] lines = error.getLines();
      problems.add(places.problem(file, lines.length > 0 ? lines[0] : 0, error.getMessage()));
    }
    return problems;
  }

  /**
   * Compiles some files and returns the problems. Use it only for trusted files, because the
   * compiler processes programs.
   *
   * @param beside trusted files whose packages they may share
   */
  public static List<Problem> compiled(
      SortedMap<String, String> rules, SortedMap<String, String> beside) {
    Set<String> packages =
        rules.values().stream().map(RuleCompiler::packageOf).collect(Collectors.toSet());
    SortedMap<String, String> sources = new TreeMap<>(beside);
    sources.values().removeIf(text -> !packages.contains(RuleCompiler.packageOf(text)));
    SortedMap<String, String> all = new TreeMap<>(sources);
    all.putAll(rules);
    List<Problem> problems = errors(all);
    return problems.stream().allMatch(p -> p.line() > 0) ? problems : oneByOne(rules, sources);
  }

  /** Compiles each rule alone, for errors where the compiler does not say which rule it means. */
  private static List<Problem> oneByOne(
      SortedMap<String, String> rules, SortedMap<String, String> beside) {
    List<Problem> problems = new ArrayList<>();
    rules.forEach(
        (file, text) -> {
          RulePlaces places = new RulePlaces(text);
          places
              .apart()
              .forEach(
                  (rule, alone) -> {
                    SortedMap<String, String> sources = new TreeMap<>(beside);
                    sources.put(file, alone);
                    for (Problem error : errors(sources)) {
                      String words = "in rule \"" + rule + "\": " + error.message();
                      problems.add(
                          error.line() > 0
                              ? error
                              : places.problem(file, places.lineOf(rule), words));
                    }
                  });
        });
    return problems;
  }

  private static List<Problem> errors(SortedMap<String, String> sources) {
    try {
      RuleCompiler.compile(sources);
      return List.of();
    } catch (RuleErrors e) {
      return e.problems();
    } catch (RuntimeException e) { // the parser may fail on an unfinished rule
      return List.of(
          new Problem(
              RulePlaces.KIND, "", 0, 0, "the compiler fails on it: " + e.getMessage(), ""));
    }
  }
}
