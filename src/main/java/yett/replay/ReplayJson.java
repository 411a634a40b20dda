package yett.replay;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.json.JsonMapper;
import yett.knowledge.Problem;

/**
 * Writes results as JSON Lines, one object a line, so that results can be read while others are
 * still running and an interrupted run leaves whole lines. Keys are in a fixed order. A line is a
 * case, or the problems of a file; its form is {@code shared/replay-result.schema.json}.
 */
public final class ReplayJson {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
          .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
          .changeDefaultPropertyInclusion(i -> i.withValueInclusion(JsonInclude.Include.NON_ABSENT))
          .build();

  private ReplayJson() {}

  private record Broken(String file, List<Problem> problems) {}

  /** One case as one line, without the line end. */
  public static String line(Replayed replayed) {
    return MAPPER.writeValueAsString(replayed);
  }

  /** The lines of a file, each with its line end: its cases, then its problems if there are any. */
  public static String lines(FileReplay file) {
    StringBuilder lines = new StringBuilder();
    file.cases().forEach(replayed -> lines.append(line(replayed)).append('\n'));
    if (!file.problems().isEmpty()) {
      lines.append(MAPPER.writeValueAsString(new Broken(file.file(), file.problems())));
      lines.append('\n');
    }
    return lines.toString();
  }
}
