package yett.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.kie.api.builder.Message;
import yett.knowledge.Problem;

/**
 * Translates the compiler's messages to the rules' own files and lines. The compiler turns rules
 * into Java and reports errors there, so a line of Java is looked up in the rules; the Java itself
 * is not shown.
 */
final class CompilerWords {
  private static final Pattern PAGE = Pattern.compile("(?s)Java source of (\\S+) in error:\n(.*)");

  private final SortedMap<String, String> sources;

  /** The generated Java, as lines by path. */
  private final Map<String, List<String>> pages = new HashMap<>();

  private CompilerWords(SortedMap<String, String> sources) {
    this.sources = sources;
  }

  static List<Problem> of(List<Message> messages, SortedMap<String, String> sources) {
    CompilerWords words = new CompilerWords(sources);
    List<Message> said = new ArrayList<>();
    for (Message message : messages) {
      Matcher page = PAGE.matcher(message.getText());
      if (page.find()) {
        words.pages.put(page.group(1), page.group(2).lines().toList());
      } else {
        said.add(message);
      }
    }
    return said.stream().map(words::problem).distinct().toList();
  }

  private Problem problem(Message message) {
    String path = Optional.ofNullable(message.getPath()).orElse("");
    List<String> page = pages.get(path);
    if (page != null) {
      return ofPage(page, message);
    }
    String file = file(path);
    RulePlaces places = new RulePlaces(sources.getOrDefault(file, ""));
    return places.problem(file, message.getLine(), message.getText());
  }

  /** The rule file for a path of the compiler: the longest file name that the path ends with. */
  private String file(String path) {
    return sources.keySet().stream()
        .filter(path::endsWith)
        .max(Comparator.comparingInt(String::length))
        .orElse(path);
  }

  /** The problem for a line of Java that occurs in a rule too, apart from white space. */
  private Problem ofPage(List<String> page, Message message) {
    int at = message.getLine() - 1;
    String line = at >= 0 && at < page.size() ? page.get(at).replaceAll("\\s", "") : "";
    for (Map.Entry<String, String> source : sources.entrySet()) {
      List<String> lines = source.getValue().lines().toList();
      for (int i = 0; i < lines.size() && !line.isEmpty(); i++) {
        String rules = lines.get(i).replaceAll("\\s", "");
        if (rules.length() > 3 && (rules.equals(line) || line.contains(rules))) {
          return new RulePlaces(source.getValue())
              .problem(source.getKey(), i + 1, message.getText());
        }
      }
    }
    return new RulePlaces("").problem("", 0, message.getText());
  }
}
