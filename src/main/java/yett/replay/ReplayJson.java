package yett.replay;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.io.IOException;
import java.util.List;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.json.JsonMapper;
import yett.knowledge.Problem;

/**
 * Results as JSON Lines: one object a line, so that several hundred cases can be read while they
 * are written, and a broken-off run leaves whole lines. Keys stand in a fixed order. A line is a
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

  /** Appends the lines of a file: its cases, then its problems if there are any. */
  public static void append(FileReplay file, Appendable out) throws IOException {
    for (Replayed replayed : file.cases()) {
      out.append(line(replayed)).append('\n');
    }
    if (!file.problems().isEmpty()) {
      out.append(MAPPER.writeValueAsString(new Broken(file.file(), file.problems()))).append('\n');
    }
  }
}
