package yett.command.diagnose.told;

import java.util.List;
import java.util.Optional;
import yett.command.common.ComplaintNames;
import yett.command.common.ListChoice;
import yett.knowledge.RuleBase;
import yett.saying.Thing;

/** Finds the complaint or the recent event whose exact name in a list some words are. */
record NamedThing(RuleBase base) {
  Optional<Thing> of(String words) {
    return new ComplaintNames(base.complaints())
        .named(words)
        .map(c -> new Thing(Thing.Kind.COMPLAINT, c.id(), ""))
        .or(
            () ->
                base.histories().values().stream()
                    .filter(
                        h -> !ListChoice.same(words, List.of(h.id()), List.of(h.name())).isEmpty())
                    .findFirst()
                    .map(h -> new Thing(Thing.Kind.HISTORY, h.id(), "")));
  }
}
