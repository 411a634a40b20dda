package yett.interview;

import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Events as JSON, the form in which they are stored. */
public final class EventText {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private EventText() {}

  public static String write(Event event) {
    return JSON.writerFor(Event.class).writeValueAsString(event);
  }

  /**
   * @throws IllegalArgumentException if the text is no event that this version knows
   */
  public static Event read(String json) {
    try {
      return JSON.readValue(json, Event.class);
    } catch (JacksonException e) {
      throw new IllegalArgumentException(
          "an event of this case was written by another version of the program", e);
    }
  }
}
