package yett.casebook;

/**
 * What is known of somebody who has to do with a case. Kept apart from the events, so that it can
 * be forgotten; in no log, and in an export only when that is asked for.
 *
 * @param part what they have to do with it
 * @param name empty if it is not known
 * @param phone number to call back, as it was said; empty if it is not known
 */
public record Person(Part part, String name, String phone) {

  /** What somebody has to do with a case. */
  public enum Part {
    CALLER,
    TECHNICIAN
  }

  public Person {
    Storable.text("name", name);
    Storable.text("phone", phone);
  }

  /** Without what it holds, because records end up in messages. */
  @Override
  public String toString() {
    return "Person[" + part + "]";
  }
}
