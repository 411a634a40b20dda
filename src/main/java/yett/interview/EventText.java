package yett.interview;

import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Events as JSON, the form in which they are stored. */
public final class EventText {
  private static final JsonMapper JSON = JsonMapper.builder().build();

  private EventText() {}

  public static String write(Event event) {
    return event instanceof Event.Unread unread
        ? unread.text()
        : JSON.writerFor(Event.class).writeValueAsString(event);
  }

  /** The event, or what stands for one that this version of the program cannot read. */
  public static Event readAny(String kind, String json) {
    try {
      return read(json);
    } catch (IllegalArgumentException e) {
      return new Event.Unread(kind, json);
    }
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
