package yett.dispatch;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that somebody who is sent to a gate has to know, from the call alone. Written as JSON
 * in the form of {@code shared/dispatch.schema.json}.
 *
 * @param caseId as the casebook calls it
 * @param gate as people call it
 * @param at the last word of the caller, ISO 8601 in UTC
 * @param call who called, from where, and what the desk did
 * @param ended how the call ended, or {@code open}
 * @param siteKnown details of the gate that differ from the usual: question to answer, in words
 * @param dangers stops that were raised, by name
 * @param notExcluded dangers of which nobody could say, or that were not asked to the end
 * @param believed causes worth a line, the most probable first; none where nothing was asked: then
 *     it is not diagnosed, and nothing below tells what is probable
 * @param first looks that most probably come first
 * @param electrician chance that an electrician is needed
 * @param bring the parts that cover what may be wrong
 * @param said in the caller's own words
 * @param asked what was asked and answered, in order
 * @param cautions for the work that is probable
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
    List<String> untilThen) {

  /** The level of a call after which nobody goes. */
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
   * @param because why it was handed over, in the words of who did
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

  /** A cause and the chance that it is there, as a number and in words. */
  public record Believed(String cause, String name, double chance, String words) {}

  /**
   * Minutes at the gate, looking and proving included.
   *
   * @param likely as often more as less
   * @param nineInTen enough in nine of ten cases
   */
  public record Minutes(int likely, int nineInTen) {}

  /** A part or an instrument, and the chance that it is needed. */
  public record Item(String name, double chance) {}

  /**
   * Parts to put in the van, in the order of what they gain: whoever cannot take all takes the
   * first.
   *
   * @param without chance that no part at all is needed, if it is something that the rule base
   *     knows
   * @param covers chance that nothing else is needed, likewise
   * @param left parts that are left out, the most probable first
   * @param unknown chance that it is something else
   */
  public record Cover(
      List<Packed> parts, double without, double covers, List<Item> left, double unknown) {
    /** Of a gate of which nothing is known. */
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
   * @param covers chance that it is enough with those before it
   * @param size which one, if the gate's details tell it
   * @param ask what has to be asked to bring the right one, if they do not
   * @param van where it is, if there is a list of what is on the van
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

  /** A question and its answer; who gave it. */
  public record Asked(String check, String question, String answer, Optional<String> by) {}
}
