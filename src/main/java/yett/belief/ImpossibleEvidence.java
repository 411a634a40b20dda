package yett.belief;

/** An answer that no set of causes in the model allows. */
public final class ImpossibleEvidence extends RuntimeException {
  private final String check;

  ImpossibleEvidence(String check) {
    super("no cause in the rule base, and no set of them, allows the answer to \"" + check + "\"");
    this.check = check;
  }

  public String check() {
    return check;
  }
}
