package yett.worksheet.chain;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import yett.calculation.ChainHang;
import yett.calculation.RollerChain;
import yett.quantity.Unit;
import yett.worksheet.Choice;
import yett.worksheet.Input;
import yett.worksheet.Values;

/** The inputs for the chain and how it hangs. */
public final class Chains {
  static final String SIZES =
      "ASME B29.1 (pitch, minimum strength), ISO 606 for 08B and 10B (strength from memory), mass"
          + " of a chain catalogue";
  static final String PARABOLA =
      "statics textbooks, cable under its own weight, supports at one height";
  static final String DECIDES =
      "The maker's instructions for the operator and for the chain take precedence over"
          + " these rules.";

  private Chains() {}

  /** The input for the chain size; see {@link #chosen}. */
  public static Input size() {
    List<Choice> sizes =
        Arrays.stream(RollerChain.values())
            .map(
                chain ->
                    new Choice(
                        chain.number().toLowerCase(Locale.ROOT),
                        words(chain),
                        List.of("#" + chain.number(), "no. " + chain.number())))
            .toList();
    return Input.choice("chain", "roller chain, by its number", sizes);
  }

  /** The chain chosen in the input {@link #size}. */
  public static RollerChain chosen(Values v) {
    return RollerChain.numbered(v.choice("chain").id()).orElseThrow();
  }

  /** Pitch (m) of the chain chosen in the input {@link #size}. */
  public static double pitch(Values v) {
    return chosen(v).pitch();
  }

  static ChainHang hang(Values v) {
    return new ChainHang(chosen(v), v.of("span"));
  }

  /**
   * The name of a chain. It begins with a digit, so that 40 is not read as a position in the list.
   */
  private static String words(RollerChain chain) {
    String pitch = Unit.MILLIMETRE.quantity().show(1000 * chain.pitch(), Unit.MILLIMETRE);
    String inches = Unit.INCH.quantity().show(1000 * chain.pitch(), Unit.INCH);
    return chain.number() + " (pitch " + inches + ", " + pitch + ")";
  }

  static Input span() {
    return Input.reading("span", Unit.METRE, "length of the free run, from support to support")
        .possible(0.2, 30);
  }

  static Input sag(String id, String words) {
    return Input.reading(id, Unit.MILLIMETRE, words).possible(0.5, 3000);
  }
}
