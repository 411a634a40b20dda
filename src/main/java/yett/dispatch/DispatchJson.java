package yett.dispatch;

import com.fasterxml.jackson.annotation.JsonInclude;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.PropertyNamingStrategies;
import tools.jackson.databind.json.JsonMapper;

/** Writes a dispatch sheet as JSON, in the form of {@code shared/dispatch.schema.json}. */
public final class DispatchJson {
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
          .propertyNamingStrategy(PropertyNamingStrategies.KEBAB_CASE)
          .changeDefaultPropertyInclusion(i -> i.withValueInclusion(JsonInclude.Include.NON_ABSENT))
          .build();

  private DispatchJson() {}

  public static String write(DispatchSheet sheet) {
    return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(sheet) + "\n";
  }
}
