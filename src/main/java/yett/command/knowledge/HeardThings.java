package yett.command.knowledge;

import java.util.Locale;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.saying.Thing;
import yett.wording.Wording;

/** Names, for a trainer, the things that were understood from words. */
record HeardThings(RuleBase base) {
  static String kind(Thing thing) {
    return Wording.capital(thing.kind().name().toLowerCase(Locale.ROOT));
  }

  /** The id of the card, and of the outcome if one is meant. */
  static String name(Thing thing) {
    return thing.outcome().isEmpty() ? thing.card() : thing.card() + "=" + thing.outcome();
  }

  String words(Thing thing) {
    return switch (thing.kind()) {
      case DANGER, OUTCOME -> {
        Check check = base.checks().get(thing.card());
        yield Wording.meaning(check, thing.outcome());
      }
      case CHECK, READING, COMPLAINT -> base.checks().get(thing.card()).ask();
      case EFFECT -> base.effects().get(thing.card()).name();
      case HISTORY -> base.histories().get(thing.card()).name();
      case PRESSING -> base.telephone().pressing().get(thing.card()).said();
      case NOTHING -> "";
    };
  }
}
