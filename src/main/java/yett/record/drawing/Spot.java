package yett.record.drawing;

import java.util.Map;
import java.util.Optional;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.SiteCard;

/** A place at a gate where something is measured or found, to which a drawing can point. */
public enum Spot {
  OPERATOR("operator"),
  CHAIN("chain"),
  MARKER("reference marker"),
  LEAF("leaf and what carries it"),
  POST("posts"),
  BEAM("photo-electric beam"),
  EDGE("contact edge"),
  LOOP("vehicle loop"),
  END("where the leaf meets the post");

  private static final Map<String, Spot> BY_AREA =
      Map.ofEntries(
          Map.entry("battery", OPERATOR),
          Map.entry("chain", CHAIN),
          Map.entry("command", OPERATOR),
          Map.entry("controller", OPERATOR),
          Map.entry("drive", OPERATOR),
          Map.entry("earthing", OPERATOR),
          Map.entry("installation", OPERATOR),
          Map.entry("leaf", LEAF),
          Map.entry("limits", END),
          Map.entry("loops", LOOP),
          Map.entry("position", MARKER),
          Map.entry("safety", END),
          Map.entry("sensing", END),
          Map.entry("solar", OPERATOR),
          Map.entry("structure", POST),
          Map.entry("supply", OPERATOR),
          Map.entry("weather", OPERATOR));

  private final String name;

  Spot(String name) {
    this.name = name;
  }

  /** The name in a legend. */
  public String word() {
    return name;
  }

  /**
   * The place where a check is made; empty if it belongs to no place, or if its area comes from an
   * add-on.
   */
  public static Optional<Spot> of(Check check) {
    return of(check, check.area());
  }

  /** The place of a cause. */
  public static Optional<Spot> of(Cause cause) {
    return of(cause, cause.area());
  }

  /** The place of a card. A card that applies only to gates with beams is at a beam, and so on. */
  private static Optional<Spot> of(SiteCard card, String area) {
    if (card.onlyIf().containsKey("beams")) {
      return Optional.of(BEAM);
    }
    if (card.onlyIf().containsKey("edges") || card.onlyIf().containsKey("wireless-edge")) {
      return Optional.of(EDGE);
    }
    return Optional.ofNullable(BY_AREA.get(area));
  }
}
