package yett.command.diagnose.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import yett.command.diagnose.screen.CautionViews;
import yett.console.Layout;
import yett.console.PlainConsole;
import yett.interview.course.Interview;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.interview.step.Occasion;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.Place;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.testing.Shipped;

class RoundViewsTest {
  private static final RuleBase BASE = Shipped.BASE;
  private static final int LINES = 24;

  static Stream<Place> places() {
    return Place.all().stream();
  }

  /** With the longest looks, and the prompt below; the cautions were read before. */
  @ParameterizedTest
  @MethodSource("places")
  void a_round_goes_on_a_screen_of_80_by_24(Place place) {
    List<Step.Ask> looks = new ArrayList<>();
    BASE.checks().values().stream()
        .filter(c -> c.place().equals(Optional.of(place)))
        .sorted((a, b) -> length(b) - length(a))
        .map(RoundViewsTest::look)
        .filter(l -> Step.LookRound.isOnePage(with(looks, l)))
        .forEach(looks::add);
    assertThat(looks.size()).isGreaterThan(1);
    List<String> hazards =
        looks.stream().flatMap(l -> l.check().hazards().stream()).distinct().toList();
    Step.LookRound round =
        new Step.LookRound(place, looks, place.needs(), BASE.cautionsFor(hazards));
    CautionViews cautions = new CautionViews(BASE);
    cautions.written(round.cautions());
    String shown = shown(new RoundViews(BASE, cautions).round(round, moment()));
    assertThat(shown.lines().count()).as(shown).isLessThan(LINES);
    looks.forEach(
        l ->
            assertThat(shown.replaceAll("\\s+", " "))
                .contains(l.check().ask() + " – " + l.check().outcomes().get(0).text()));
  }

  /** Nobody says "as fast as ever" of a slow gate by pressing Enter. */
  @Test
  void what_a_complaint_speaks_against_is_not_offered_as_ordinary() {
    Step.LookRound run =
        new Step.LookRound(
            Place.named("one-run").orElseThrow(),
            Stream.of("speed-seen", "stops-where")
                .map(BASE.checks()::get)
                .map(RoundViewsTest::look)
                .toList(),
            List.of(),
            List.of());
    RoundViews views = new RoundViews(BASE, new CautionViews(BASE));
    assertThat(shown(views.round(run, moment())))
        .contains("as fast as ever")
        .doesNotContain("say which");
    assertThat(shown(views.round(run, moment(new Event.Complained(List.of("slow"))))))
        .contains("fast as it used to? – say which")
        .contains("at its ends, as it should")
        .doesNotContain("as fast as ever");
    assertThat(shown(views.round(run, moment(new Event.Complained(List.of("closes-partway"))))))
        .contains("stop on its own? – say which");
  }

  private static List<Step.Ask> with(List<Step.Ask> looks, Step.Ask more) {
    List<Step.Ask> all = new ArrayList<>(looks);
    all.add(more);
    return all;
  }

  private static int length(Check check) {
    return check.ask().length() + check.outcomes().get(0).text().length();
  }

  private static Step.Ask look(Check check) {
    return new Step.Ask(
        check,
        BASE.cautionsFor(check.hazards()),
        Optional.empty(),
        Optional.empty(),
        Occasion.of(Occasion.Kind.WORTH));
  }

  private static Moment moment(Event... events) {
    List<Entry> entries = new ArrayList<>();
    Event opened = new Event.Opened("Harrow Quay, north gate", Role.TECHNICIAN, "any");
    entries.add(new Entry(1, Instant.EPOCH, Role.TECHNICIAN, opened));
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1, Instant.EPOCH, Role.TECHNICIAN, event));
    }
    try (Interview interview = Shipped.QUICK.newInterview()) {
      return interview.at(entries);
    }
  }

  private static String shown(List<yett.console.Block> blocks) {
    ByteArrayOutputStream screen = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(screen, true, StandardCharsets.UTF_8);
    new PlainConsole(
            new ByteArrayInputStream(new byte[0]), out, out, new Layout(80, false, true), true)
        .show(blocks);
    return screen.toString(StandardCharsets.UTF_8);
  }
}
