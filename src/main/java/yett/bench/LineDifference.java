package yett.bench;

import java.util.ArrayList;
import java.util.List;

/**
 * Shows the differences between two texts line by line, by their longest common subsequence:
 * removed lines with "-", added lines with "+", and the lines around them.
 */
public final class LineDifference {
  private static final int BESIDE = 2;

  private LineDifference() {}

  public static List<String> of(String before, String after) {
    List<String> marked = marked(before.lines().toList(), after.lines().toList());
    List<String> near = new ArrayList<>();
    boolean left = false;
    for (int i = 0; i < marked.size(); i++) {
      boolean shown =
          marked.subList(Math.max(0, i - BESIDE), Math.min(marked.size(), i + BESIDE + 1)).stream()
              .anyMatch(line -> !line.startsWith(" "));
      if (shown) {
        near.add(marked.get(i));
      } else if (!left) {
        near.add("…");
      }
      left = !shown;
    }
    return near;
  }

  private static List<String> marked(List<String> before, List<String> after) {
    int[][] common = new int[before.size() + 1][after.size() + 1];
    for (int b = before.size() - 1; b >= 0; b--) {
      for (int a = after.size() - 1; a >= 0; a--) {
        common[b][a] =
            before.get(b).equals(after.get(a))
                ? 1 + common[b + 1][a + 1]
                : Math.max(common[b + 1][a], common[b][a + 1]);
      }
    }
    List<String> marked = new ArrayList<>();
    int b = 0;
    int a = 0;
    while (b < before.size() || a < after.size()) {
      boolean same = b < before.size() && a < after.size() && before.get(b).equals(after.get(a));
      if (same) {
        marked.add("  " + before.get(b++));
        a++;
      } else if (a == after.size() || b < before.size() && common[b + 1][a] >= common[b][a + 1]) {
        marked.add("- " + before.get(b++));
      } else {
        marked.add("+ " + after.get(a++));
      }
    }
    return marked;
  }
}
