package yett.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import yett.testing.Shipped;

/** Whatever an agent reads out to a caller is in words that anybody understands, and is safe. */
class SpokenTextsTest {
  private static final RuleBase BASE = Shipped.BASE;

  /** Words of the trade; what a lay person calls the thing stands in the texts instead. */
  private static final Pattern TRADE =
      Pattern.compile(
          "\\b(operators?|leaf|sprockets?|idlers?|command(s|ed)?|mains|transmitters?|receivers?"
              + "|beams?|edges?|loops?|isolators?|circuits?|terminals?|controllers?|travel"
              + "|obstructions?|photo-?(cell|eye|electric)\\w*|interlock\\w*|lock(s|ed)? ?-?out"
              + "|polarity|volt\\w*|amp(s|eres?)?|dc|ac|ohms?|suppl(y|ies)|actuators?"
              + "|cantilever\\w*|detectors?|inputs?|outputs?|enclosures?|cabinets?|guide rollers?"
              + "|conductors?|devices?|revers(al|es?|ed|ing)|each way|de-?energi\\w*|pinch|bollards?"
              + "|faults?|ground-fault|earth(ed|ing)?|hold-open|set-?ups?|limits?|relays?|solenoids?"
              + "|antennas?|markers?|chocks?|diagnos\\w*|rcd|insulation|hazards?)\\b",
          Pattern.CASE_INSENSITIVE);

  /** A text and whose it is, for whoever has to mend it. */
  private record Spoken(String card, String text) {}

  private static List<Spoken> all() {
    List<Spoken> all = new ArrayList<>();
    for (Check check : callersChecks().toList()) {
      String id = "check " + check.id();
      all.add(new Spoken(id, check.lay().isEmpty() ? check.ask() : check.lay()));
      all.add(new Spoken(id, check.how()));
      check.outcomes().forEach(o -> all.add(new Spoken(id, o.text())));
    }
    BASE.complaints().forEach(c -> all.add(new Spoken("complaint " + c.id(), c.lay())));
    for (Repair repair : callersRepairs().toList()) {
      String id = "repair " + repair.id();
      all.add(new Spoken(id, repair.name()));
      repair.steps().forEach(s -> all.add(new Spoken(id, s)));
      Telephone telephone = BASE.telephone();
      telephone
          .watch()
          .getOrDefault(repair.id(), List.of())
          .forEach(w -> all.add(new Spoken(id, w)));
    }
    BASE.stops()
        .forEach((id, s) -> s.now(Role.CALLER).forEach(n -> all.add(new Spoken("stop " + id, n))));
    BASE.telephone()
        .pressing()
        .forEach(
            (id, p) ->
                Stream.concat(Stream.of(p.ask()), p.untilThen().stream())
                    .forEach(t -> all.add(new Spoken("pressing " + id, t))));
    BASE.telephone()
        .untilThen()
        .forEach((id, lines) -> lines.forEach(l -> all.add(new Spoken("complaint " + id, l))));
    BASE.histories().forEach((id, h) -> all.add(new Spoken("history " + id, h.spoken())));
    BASE.telephone().cautions().forEach((id, lay) -> all.add(new Spoken("caution " + id, lay)));
    return all;
  }

  private static Stream<Check> callersChecks() {
    return BASE.checks().values().stream()
        .filter(c -> c.who() == Role.CALLER && c.kind() != Check.Kind.COMPLAINT);
  }

  private static Stream<Repair> callersRepairs() {
    return BASE.repairs().values().stream().filter(r -> r.who() == Role.CALLER);
  }

  @Test
  void no_word_of_the_trade_is_read_out() {
    List<String> wrong = new ArrayList<>();
    for (Spoken spoken : all()) {
      Matcher found = TRADE.matcher(spoken.text());
      if (found.find()) {
        wrong.add(spoken.card() + ": \"" + found.group() + "\" in: " + spoken.text());
      }
    }
    assertThat(all()).hasSizeGreaterThan(400);
    assertThat(wrong).isEmpty();
  }

  /** Who is asked to let it run hears first where to stand, and that it may not stop. */
  @Test
  void whatever_lets_the_gate_move_is_read_out_with_its_cautions() {
    Pattern moves =
        Pattern.compile("\\b(press once|press it|opens? it once|open once|once from|may move)\\b");
    callersChecks()
        .filter(c -> !c.danger() && moves.matcher(c.how().toLowerCase(Locale.ROOT)).find())
        .forEach(c -> assertThat(c.hazards()).as(c.id()).contains("moving-leaf"));
    callersRepairs().forEach(r -> assertThat(r.hazards()).as(r.id()).contains("moving-leaf"));
    Stream.concat(
            callersChecks().flatMap(c -> c.hazards().stream()),
            callersRepairs().flatMap(r -> r.hazards().stream()))
        .distinct()
        .forEach(
            hazard ->
                assertThat(BASE.cautionsFor(List.of(hazard)))
                    .as(hazard)
                    .isNotEmpty()
                    .allSatisfy(
                        c -> assertThat(BASE.telephone().cautions().get(c.id())).isNotEmpty()));
  }

  /** Each repair that a caller does ends with a run that is watched from aside, or with none. */
  @Test
  void whoever_tries_it_afterwards_stands_aside() {
    Pattern aside = Pattern.compile("(?i)aside|from the side|in sight|clear of|away|from where");
    callersRepairs()
        .filter(r -> r.steps().stream().anyMatch(s -> s.contains("press once")))
        .forEach(
            r ->
                assertThat(r.steps().stream().filter(s -> s.contains("press once")))
                    .as(r.id())
                    .allSatisfy(s -> assertThat(s).containsPattern(aside)));
  }
}
