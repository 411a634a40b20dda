package yett.interview.event;

import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/** Events as JSON, the form in which they are stored. */
public final class EventText {
  private static final JsonMapper JSON = JsonMapper.shared();

  private static final String OTHER_VERSION =
      "an event of this case was written by another version of the program";

  private EventText() {}

  public static String write(Event event) {
    return event instanceof Event.Unread unread
        ? unread.text()
        : JSON.writerFor(Event.class).writeValueAsString(event);
  }

  /**
   * @throws IllegalArgumentException if the text is no event that this version knows
   */
  public static Event read(String json) {
    try {
      Event event = JSON.readValue(json, Event.class);
      if (event != null) {
        return event;
      }
    } catch (JacksonException e) {
      throw new IllegalArgumentException(OTHER_VERSION, e);
    }
    throw new IllegalArgumentException(OTHER_VERSION);
  }
}
