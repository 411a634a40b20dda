package yett.practice.course;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;
import yett.files.BoundedFile;
import yett.practice.Result;

/**
 * Results from many computers in one list, from the file {@code practice.jsonl} of each.
 *
 * @param results each once, even if several files have it
 * @param problems one line each, with file and line
 */
public record ResultFiles(List<Result> results, List<String> problems) {
  private static final JsonMapper JSON = JsonMapper.shared();
  private static final int LARGEST = 16 << 20;
  private static final int LONGEST = 10_000;

  /** Reading stops after this many wrong lines, because it is then the wrong file. */
  private static final int MOST_PROBLEMS = 20;

  public static ResultFiles read(List<Path> files) {
    Set<Result> results = new LinkedHashSet<>();
    List<String> problems = new ArrayList<>();
    for (Path file : files) {
      try (BoundedFile.Lines lines = BoundedFile.lines(file, LARGEST, LONGEST)) {
        read(file, lines, results, problems);
      } catch (IOException e) {
        problems.add(file + ": it cannot be read. See that it is there, and a text in UTF-8.");
      }
    }
    return new ResultFiles(List.copyOf(results), List.copyOf(problems));
  }

  private static void read(
      Path file, BoundedFile.Lines lines, Set<Result> results, List<String> problems)
      throws IOException {
    int wrong = 0;
    int number = 0;
    for (String line = lines.next(); line != null; line = lines.next()) {
      number++;
      Optional<Result> result = line.isBlank() ? Optional.empty() : result(line);
      result.ifPresent(results::add);
      if (result.isEmpty() && !line.isBlank()) {
        problems.add(
            file
                + ":"
                + number
                + ": this line is not the result of an exercise. Take the file practice.jsonl as it"
                + " is.");
        if (++wrong == MOST_PROBLEMS) {
          problems.add(file + ": it is read no further.");
          return;
        }
      }
    }
  }

  private static Optional<Result> result(String line) {
    try {
      return Optional.ofNullable(JSON.readValue(line, Result.class)).filter(Result::isPossible);
    } catch (JacksonException e) {
      return Optional.empty();
    }
  }
}
