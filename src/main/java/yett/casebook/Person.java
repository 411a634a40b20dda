package yett.casebook;

/**
 * What is known of a person who has to do with a case. It is stored separately from the events, so
 * that it can be deleted. It is in no log, and in an export only if asked for.
 *
 * @param part what they have to do with it
 * @param name empty if it is not known
 * @param phone number to call back, as it was said; empty if it is not known
 */
public record Person(Part part, String name, String phone) {

  /** What somebody has to do with a case. */
  public enum Part {
    CALLER("caller"),
    /** Whoever else rang about the same case, the latest of them. */
    OTHER_CALLER("other caller"),
    TECHNICIAN("technician");

    private final String words;

    Part(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    public boolean called() {
      return this != TECHNICIAN;
    }
  }

  public Person {
    Storable.text("name", name);
    Storable.text("phone", phone);
  }

  /** Without the person's data, because records end up in messages. */
  @Override
  public String toString() {
    return "Person[" + part + "]";
  }
}
