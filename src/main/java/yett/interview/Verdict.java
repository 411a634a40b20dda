package yett.interview;

/** What an inspection makes of one thing. */
public enum Verdict {
  PASS("pass"),
  /** It does its work; something about it is to be kept in view or seen to. */
  REMARK("remark"),
  FAIL("fail"),
  /** Nobody could tell, or may, or did yet. */
  OPEN("not inspected");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
