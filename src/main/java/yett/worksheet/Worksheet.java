package yett.worksheet;

import java.util.List;
import java.util.Optional;

/**
 * A calculation that a person can ask for: what it needs, what it tells, and how that is meant. The
 * formula itself is a class of {@code yett.calculation}, which the rules may use as well.
 */
public abstract class Worksheet {
  private final Subject subject;
  private final String id;
  private final String title;

  /**
   * @param id what is typed, in words with hyphens
   * @param title what it finds out, no full stop
   */
  protected Worksheet(Subject subject, String id, String title) {
    this.subject = subject;
    this.id = id;
    this.title = title;
  }

  public final Subject subject() {
    return subject;
  }

  public final String id() {
    return id;
  }

  public final String title() {
    return title;
  }

  /** In the order in which they are asked for. */
  public abstract List<Input> inputs();

  /** In the order in which they are told. */
  public abstract List<Output> outputs();

  /** The formula as text, with its symbols. */
  public abstract String formula();

  /** What it is good for, and what it leaves out. */
  public abstract String validity();

  /** Where formula and figures come from; common practice and memory are called that. */
  public abstract String source();

  /** Who or what has the last word: a code, a licence, a data sheet. A sentence. */
  public abstract Optional<String> lastWord();

  /** What to mind before anything is measured for it. */
  public List<Note> notes() {
    return List.of();
  }

  /**
   * Works it out. Results that these inputs cannot give are left out.
   *
   * @throws InputException if inputs that are possible one by one do not go together
   * @throws IllegalArgumentException if a formula refuses a value
   */
  protected abstract Results work(Entries entries);

  /** Where these inputs together leave what the formula is good for; sentences. */
  protected List<String> remarks(Entries entries, Results results) {
    return List.of();
  }

  /** What these results mean; their uncertainties are known by then. */
  protected abstract Meaning meaning(Entries entries, Results results);

  @Override
  public final String toString() {
    return id;
  }
}
