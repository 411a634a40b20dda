package yett.interview.inspection;

/** The verdict of an inspection on one check. */
public enum Verdict {
  PASS("pass"),
  /** It works, but has to be watched or attended to. */
  REMARK("remark"),
  FAIL("fail"),
  /** Not inspected: nobody could, nobody was allowed to, or it has not been done yet. */
  OPEN("not inspected");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
