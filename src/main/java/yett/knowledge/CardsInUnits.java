package yett.knowledge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import yett.quantity.Units;

/**
 * Converts cards, which are written in SI units, for a reader who uses other units. Texts that are
 * read out on the telephone stay as they are.
 */
record CardsInUnits(Units units) {

  <T> Map<String, T> each(Map<String, T> cards, UnaryOperator<T> card) {
    Map<String, T> all = new LinkedHashMap<>();
    cards.forEach((id, one) -> all.put(id, card.apply(one)));
    return all;
  }

  Cause cause(Cause c) {
    return new Cause(
        c.id(),
        units.in(c.name()),
        c.area(),
        c.prior(),
        c.consequences(),
        c.leadsTo(),
        c.retestFails(),
        c.onlyIf(),
        units.in(c.arises()),
        units.in(c.prevent()),
        c.source());
  }

  SetUp setUp(SetUp s) {
    return new SetUp(
        s.id(),
        units.in(s.name()),
        s.enterMinutes(),
        s.leaveMinutes(),
        s.who(),
        s.hazards(),
        s.within(),
        s.excludes(),
        units.in(s.enter()),
        units.in(s.leave()),
        units.in(s.enterAgain()),
        units.in(s.leaveAgain()),
        s.source());
  }

  Caution caution(Caution c) {
    return new Caution(
        c.id(),
        c.hazard(),
        c.word(),
        units.in(c.what()),
        units.in(c.harm()),
        units.in(c.avoid()),
        c.onlyIf(),
        c.source());
  }

  Stop stop(Stop s) {
    Map<Role, List<Stop.Line>> now = new LinkedHashMap<>();
    s.now()
        .forEach(
            (role, lines) ->
                now.put(
                    role,
                    lines.stream()
                        .map(line -> new Stop.Line(units.in(line.text()), line.deed()))
                        .toList()));
    return new Stop(
        s.id(), units.in(s.name()), now, s.leaves(), s.goesOn(), s.inquiry(), s.source());
  }
}
