package yett.knowledge;

import java.util.Currency;
import java.util.List;
import java.util.Optional;

/**
 * What stands at the head of the papers that a firm hands out, and how they are printed.
 *
 * @param name of the firm; empty if it says none
 * @param address line by line
 * @param logo file with its sign, beside the settings or with its whole path
 * @param currency in which the prices of the cards are
 * @param paper the word for the sheets it prints on
 */
public record Letterhead(
    String name,
    List<String> address,
    String telephone,
    String mail,
    Optional<String> logo,
    Optional<String> currency,
    String paper) {
  private static final List<String> PAPERS = List.of("A4", "Letter");

  /** A sheet without a head. */
  public static final Letterhead NONE =
      new Letterhead("", List.of(), "", "", Optional.empty(), Optional.empty(), PAPERS.get(0));

  public Letterhead {
    address = List.copyOf(address);
  }

  /**
   * @param settings all that the firm says
   * @param firm the part on who it is
   */
  static Letterhead read(Fields settings, Fields firm) {
    Optional<String> currency =
        Optional.of(settings.text("currency", "")).filter(c -> !c.isEmpty());
    currency
        .filter(c -> !isCurrency(c))
        .ifPresent(
            c ->
                settings.problem(
                    "currency",
                    "unknown-word",
                    "\"" + c + "\" is not a currency",
                    "Write its three letters of ISO 4217, such as EUR or USD."));
    return new Letterhead(
        firm.text("name", ""),
        firm.has("address") ? firm.texts("address") : List.of(),
        firm.text("telephone", ""),
        firm.text("e-mail", ""),
        Optional.of(firm.text("logo", "")).filter(l -> !l.isEmpty()),
        currency,
        settings.oneOf("paper", PAPERS.get(0), PAPERS));
  }

  private static boolean isCurrency(String code) {
    return Currency.getAvailableCurrencies().stream()
        .anyMatch(known -> known.getCurrencyCode().equals(code));
  }
}
