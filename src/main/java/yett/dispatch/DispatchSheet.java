package yett.dispatch;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that the person who is sent to a gate has to know, from the call alone. The JSON form
 * is {@code shared/dispatch.schema.json}.
 *
 * @param caseId number of the case in the casebook
 * @param gate as people call it
 * @param at time of the caller's last words, ISO 8601 in UTC
 * @param call who called, from where, and what the desk did
 * @param ended how the call ended, or {@code open}
 * @param siteKnown details of the gate that differ from the usual: question to answer, in words
 * @param dangers names of the stops that were raised
 * @param notExcluded dangers about which nobody could tell, or for which the questions were not all
 *     asked
 * @param putRight causes that were put right on the telephone, with their chances at the call-out
 * @param believed causes worth a line, the most probable first; empty if nothing was asked. Then
 *     nothing is diagnosed, and the fields below do not say what is probable
 * @param first looks that will probably be made first
 * @param electrician chance that an electrician is needed
 * @param bring the parts that cover what may be wrong
 * @param said in the caller's own words
 * @param asked what was asked and answered, in order
 * @param cautions for the probable work
 * @param stands how the gate stands, as far as it was told
 * @param untilThen how the gate is left until somebody comes
 */
public record DispatchSheet(
    String caseId,
    String gate,
    String at,
    String ended,
    Call call,
    Urgency urgency,
    Map<String, String> siteKnown,
    List<String> dangers,
    List<String> notExcluded,
    List<Believed> putRight,
    List<Believed> believed,
    List<String> first,
    Optional<Minutes> minutesOnSite,
    Optional<Double> electrician,
    Cover bring,
    List<Item> instruments,
    List<String> said,
    List<String> complaints,
    List<String> histories,
    List<Asked> asked,
    List<String> notes,
    List<String> cautions,
    List<String> stands,
    List<String> untilThen) {

  /** The level of a call for which nobody goes to the gate. */
  static final String NOBODY = "nobody is sent";

  public boolean somebodyGoes() {
    return !urgency.level().equals(NOBODY);
  }

  public boolean diagnosed() {
    return !believed.isEmpty();
  }

  /**
   * Who called, and what the desk did about it; what is not known is left out.
   *
   * @param because why it was handed over, in the words of the person who did
   * @param sent who goes
   * @param due by when, ISO 8601 in UTC
   * @param help who was called for help
   */
  public record Call(
      Optional<String> caller,
      Optional<String> phone,
      Optional<String> where,
      Optional<String> because,
      Optional<String> sent,
      Optional<String> due,
      Optional<String> help) {}

  /** How soon, and why. */
  public record Urgency(String level, List<String> reasons) {}

  /** A cause and the chance that it is present, as a number and in words. */
  public record Believed(String cause, String name, double chance, String words) {}

  /**
   * Minutes at the gate, including looks and proofs.
   *
   * @param likely the median: as often more as less
   * @param nineInTen enough in nine cases of ten
   */
  public record Minutes(int likely, int nineInTen) {}

  /** A part or an instrument, and the chance that it is needed. */
  public record Item(String name, double chance) {}

  /**
   * Parts to put in the van, the most useful first, so that somebody who cannot take all takes the
   * first ones.
   *
   * @param without chance that no part at all is needed, given that the cause is in the rule base
   * @param covers chance that no other part is needed, under the same condition
   * @param left parts that are left out, the most probable first
   * @param unknown chance that the cause is not in the rule base
   */
  public record Cover(
      List<Packed> parts, double without, double covers, List<Item> left, double unknown) {
    /** For a gate of which nothing is known. */
    static final Cover UNKNOWN = new Cover(List.of(), 1, 1, List.of(), 1);

    public List<String> names() {
      return parts.stream().map(Packed::name).toList();
    }
  }

  /**
   * A part in the van.
   *
   * @param chance that it is needed
   * @param price in the firm's currency
   * @param covers chance that this part and those before it are enough
   * @param size which one, if the gate's details determine it
   * @param ask what has to be asked to bring the right one, if they do not
   * @param van where it is, if there is a list of the van's stock
   */
  public record Packed(
      String name,
      double chance,
      double price,
      double covers,
      Optional<String> size,
      Optional<String> ask,
      Optional<String> van) {
    Packed(String name, double chance, double price, double covers) {
      this(name, chance, price, covers, Optional.empty(), Optional.empty(), Optional.empty());
    }
  }

  /** A question with its answer, and who gave it. */
  public record Asked(String check, String question, String answer, Optional<String> by) {}
}
