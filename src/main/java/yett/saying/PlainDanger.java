package yett.saying;

import java.util.LinkedHashSet;
import java.util.Set;

/**
 * Dangers that a clause tells of in words that leave no doubt, whether or not a card has a sentence
 * like it. They are asked about like all others.
 */
final class PlainDanger {
  private static final Thing HURT =
      new Thing(Thing.Kind.DANGER, "danger-person", "hurt-or-trapped");
  private static final Thing BURNING = new Thing(Thing.Kind.DANGER, "danger-burning", "burning");

  private static final Thing FIRE = new Thing(Thing.Kind.DANGER, "danger-fire", "fire");

  private static final Thing MOVED =
      new Thing(Thing.Kind.DANGER, "danger-movement", "moved-by-itself");

  private PlainDanger() {}

  static Set<Thing> in(String clause) {
    Set<Thing> dangers = new LinkedHashSet<>();
    if (Injury.in(clause)) {
      dangers.add(HURT);
    }
    if (SmokeSeen.isFire(clause)) {
      dangers.add(FIRE);
    }
    if (SmokeSeen.isSmoke(clause) || Tripped.withABang(clause)) {
      dangers.add(BURNING);
    }
    if (RollsAway.in(clause)) {
      dangers.add(MOVED);
    }
    return dangers;
  }
}
