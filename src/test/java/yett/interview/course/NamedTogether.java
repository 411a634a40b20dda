package yett.interview.course;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.interview.course.Concluding.Mark;
import yett.knowledge.RuleBase;

/**
 * Which cards some rule that stops, forbids or keeps from something names together, itself or by a
 * stop that another rule raises. What is not named together bears on each other in no rule, so that
 * the rules can be asked for each apart.
 */
final class NamedTogether {
  private static final Pattern QUOTED = Pattern.compile("\"([a-z0-9-]+)\"");

  /** Each card or stop with one that stands for all that are named together with it. */
  private final Map<String, String> standsFor = new HashMap<>();

  NamedTogether(RuleBase base) {
    Set<String> ids = new HashSet<>(base.checks().keySet());
    ids.addAll(base.repairs().keySet());
    ids.addAll(base.stops().keySet());
    base.rules().values().stream()
        .flatMap(text -> Stream.of(text.split("(?m)^rule ")))
        .filter(rule -> Representatives.FORBIDS.matcher(rule).find())
        .forEach(
            rule ->
                join(
                    QUOTED
                        .matcher(rule)
                        .results()
                        .map(r -> r.group(1))
                        .filter(ids::contains)
                        .toList()));
    base.repairs().values().forEach(r -> r.entails().forEach(e -> join(List.of(r.id(), e))));
  }

  private void join(List<String> named) {
    named.forEach(id -> standsFor.put(of(id), of(named.get(0))));
  }

  private String of(String id) {
    String other = standsFor.getOrDefault(id, id);
    return other.equals(id) ? id : of(other);
  }

  /** Each with all that is named together with it, in the order in which they stand. */
  Collection<List<Mark>> parts(List<Mark> marks) {
    return marks.stream()
        .collect(Collectors.groupingBy(m -> of(m.card()), LinkedHashMap::new, Collectors.toList()))
        .values();
  }

  /** Those that are named together with it, itself among them. */
  List<Mark> partOf(Mark mark, List<Mark> marks) {
    String part = of(mark.card());
    return marks.stream().filter(m -> of(m.card()).equals(part)).toList();
  }
}
