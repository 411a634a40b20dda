package yett.practice.course;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;
import yett.files.BoundedFile;
import yett.practice.Result;

/**
 * Results of many computers in one list: the files {@code practice.jsonl} of each.
 *
 * @param results each once, however many files have it
 * @param problems a line each, with file and line
 */
public record ResultFiles(List<Result> results, List<String> problems) {
  private static final JsonMapper JSON = JsonMapper.shared();
  private static final int LARGEST = 16 << 20;

  public static ResultFiles read(List<Path> files) {
    Set<Result> results = new LinkedHashSet<>();
    List<String> problems = new ArrayList<>();
    for (Path file : files) {
      try {
        read(file, BoundedFile.text(file, LARGEST).lines().toList(), results, problems);
      } catch (IOException e) {
        problems.add(file + ": it cannot be read. See that it is there, and a text in UTF-8.");
      }
    }
    return new ResultFiles(List.copyOf(results), List.copyOf(problems));
  }

  private static void read(
      Path file, List<String> lines, Set<Result> results, List<String> problems) {
    for (int i = 0; i < lines.size(); i++) {
      if (!lines.get(i).isBlank()) {
        try {
          results.add(JSON.readValue(lines.get(i), Result.class));
        } catch (JacksonException e) {
          problems.add(
              file
                  + ":"
                  + (i + 1)
                  + ": this line is no result of an exercise. Take the file practice.jsonl as it"
                  + " is.");
        }
      }
    }
  }
}
