package yett.knowledge;

import java.util.Currency;
import java.util.List;
import java.util.Optional;

/**
 * The heading of the papers that a firm hands out, and the paper size.
 *
 * @param name of the firm; empty if it gives none
 * @param address line by line
 * @param logo file of its logo, beside the settings or as a full path
 * @param currency of the prices on cards
 * @param paper name of the paper size
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

  /** An empty heading. */
  public static final Letterhead NONE =
      new Letterhead("", List.of(), "", "", Optional.empty(), Optional.empty(), PAPERS.get(0));

  public Letterhead {
    address = List.copyOf(address);
  }

  /**
   * Reads the letterhead.
   *
   * @param settings all settings of the firm
   * @param firm the part about the firm itself
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
