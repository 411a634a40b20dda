package yett.record.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import yett.interview.course.Interview;
import yett.interview.event.Answer;
import yett.interview.event.Entry;
import yett.interview.event.Event;
import yett.interview.moment.Moment;
import yett.knowledge.Role;
import yett.paper.Markup;
import yett.testing.Shipped;

/** What is drawn of a gate, measured in the drawing. */
class DrawingTest {
  private static final double WITHIN = 0.01;

  private static Moment gate(String... site) {
    List<Event> events = new ArrayList<>();
    events.add(new Event.Opened("Net loft", Role.TECHNICIAN, ""));
    for (int i = 0; i < site.length; i += 2) {
      events.add(
          site[i].equals("chain-sag")
              ? new Event.Answered(
                  site[i], new Answer.Read(site[i + 1], Double.parseDouble(site[i + 1])))
              : new Event.SiteAnswered(site[i], site[i + 1]));
    }
    List<Entry> entries = new ArrayList<>();
    for (Event event : events) {
      entries.add(new Entry(entries.size() + 1L, java.time.Instant.EPOCH, Role.TECHNICIAN, event));
    }
    try (Interview interview = Shipped.QUICK.newInterview()) {
      return interview.at(entries);
    }
  }

  private static GateShape shape(String... site) {
    return GateShape.of(gate(site), Shipped.BASE);
  }

  private static Element drawn(GateShape shape) {
    Spots spots = new Spots(shape);
    for (Spot spot : Spot.values()) {
      spots.number(Optional.of(spot));
    }
    Markup page = new Markup();
    new Elevation(shape, spots).draw(page);
    return parsed(page).getDocumentElement();
  }

  private static Document parsed(Markup page) {
    try {
      return DocumentBuilderFactory.newDefaultInstance()
          .newDocumentBuilder()
          .parse(new InputSource(new StringReader(page.toString())));
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new AssertionError("not well-formed", e);
    }
  }

  private static Element part(Element svg, String name) {
    for (String element : List.of("rect", "polyline")) {
      var found = svg.getElementsByTagName(element);
      for (int i = 0; i < found.getLength(); i++) {
        if (((Element) found.item(i)).getAttribute("class").equals(name)) {
          return (Element) found.item(i);
        }
      }
    }
    throw new AssertionError("no " + name);
  }

  private static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute).replace("mm", ""));
  }

  /** ISO 5455: 6 m at 1 : 50 are 120 mm. */
  @ParameterizedTest
  @CsvSource({"6 m, 50", "3 m, 50", "5 m, 50", "10 m, 75", "20 m, 150"})
  void the_opening_is_to_scale(String opening, int scale) {
    Element svg = drawn(shape("opening", opening));

    double left = number(part(svg, "post-end"), "x") + number(part(svg, "post-end"), "width");
    double right = number(part(svg, "post-operator"), "x");
    double metres = Double.parseDouble(opening.replace(" m", ""));
    assertThat(right - left).isCloseTo(metres * 1000 / scale, within());
    assertThat(svg.getAttribute("alt")).contains("scale 1 : " + scale);
    assertThat(number(part(svg, "leaf"), "height")).isCloseTo(1720.0 / scale, within());
    assertThat(number(svg, "width")).isLessThanOrEqualTo(168);
    assertThat(svg.getAttribute("viewBox"))
        .isEqualTo(
            "0 0 "
                + svg.getAttribute("width").replace("mm", "")
                + " "
                + svg.getAttribute("height").replace("mm", ""));
  }

  /**
   * From above it is as large as from inside, and its loops are as long as they are on the road.
   */
  @ParameterizedTest
  @CsvSource({"6 m, 50", "3 m, 50", "10 m, 75", "20 m, 150"})
  void the_plan_is_to_scale(String opening, int scale) {
    GateShape shape = shape("opening", opening, "loops", "fitted");
    Markup page = new Markup();
    new Plan(shape, new Spots(shape)).draw(page);
    Element svg = parsed(page).getDocumentElement();

    double left = number(part(svg, "post-end"), "x") + number(part(svg, "post-end"), "width");
    double right = number(part(svg, "post-operator"), "x");
    double metres = Double.parseDouble(opening.replace(" m", ""));
    assertThat(right - left).isCloseTo(metres * 1000 / scale, within());
    assertThat(number(part(svg, "loop"), "width")).isCloseTo(metres * 700 / scale, within());
    assertThat(number(part(svg, "loop"), "height")).isCloseTo(600.0 / scale, within());
    assertThat(svg.getAttribute("alt")).contains("scale 1 : " + scale);
    assertThat(number(svg, "width")).isLessThanOrEqualTo(168);
  }

  /**
   * The time axis ends at 5 s. Between 20 N at 2 s and 10 N at 5.5 s a straight line has 11.4 N
   * there; the chart has 36 mm for 440 N above its axis at 40 mm.
   */
  @Test
  void a_record_that_goes_on_after_the_chart_is_drawn_to_the_edge_of_the_chart() {
    List<Double> record = List.of(0.0, 0.0, 0.15, 372.0, 2.0, 20.0, 5.5, 10.0, 6.0, 10.0);
    Markup page = new Markup();
    new ForceChart(
            new Event.ForceTaken(
                "reversal-closing", 50, Event.Height.LOW, 372, 0.4, Optional.of(11.4), record))
        .draw(page);

    String[] points =
        part(parsed(page).getDocumentElement(), "force").getAttribute("points").split("[ ,]");
    assertThat(points).hasSize(8);
    assertThat(Double.parseDouble(points[6])).isCloseTo(138, within());
    assertThat(Double.parseDouble(points[7])).isCloseTo(40 - 11.43 * 36 / 440, within());
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(WITHIN);
  }

  @Test
  void the_chain_has_its_run_and_hangs_as_it_was_measured() {
    GateShape shape = shape("opening", "5 m", "chain-span", "4 m", "chain-sag", "200");
    String[] points = part(drawn(shape), "chain").getAttribute("points").split(" ");

    double[] first = point(points[0]);
    double[] last = point(points[points.length - 1]);
    double[] middle = point(points[points.length / 2]);
    assertThat(last[0] - first[0]).isCloseTo(4000 / 50.0, within());
    assertThat(first[1]).isCloseTo(last[1], within());
    assertThat(middle[1] - first[1]).isCloseTo(200 / 50.0, within());
    assertThat(shape.assumed()).containsExactly("length and height of the leaf");
  }

  private static double[] point(String words) {
    String[] parts = words.split(",");
    return new double[] {Double.parseDouble(parts[0]), Double.parseDouble(parts[1])};
  }

  @Test
  void what_nobody_told_is_said_to_be_assumed() {
    assertThat(shape().assumed())
        .containsExactly(
            "opening 5 m",
            "length and height of the leaf",
            "length of the chain's run",
            "sag of the chain");
  }

  @Test
  void what_is_not_fitted_is_neither_drawn_nor_numbered() {
    GateShape bare = shape("beams", "none", "edges", "none", "loops", "none", "marker", "none");
    GateShape full = shape("beams", "two", "support", "cantilever");

    assertThat(names(drawn(bare))).doesNotContain("beam", "edge", "marker", "carriage");
    assertThat(names(drawn(full))).contains("beam", "edge", "marker", "carriage");
    assertThat(new Spots(bare).number(Optional.of(Spot.BEAM))).isEmpty();
    assertThat(full.leaf()).isCloseTo(7.0, within());
  }

  private static List<String> names(Element svg) {
    List<String> names = new ArrayList<>();
    var found = svg.getElementsByTagName("rect");
    for (int i = 0; i < found.getLength(); i++) {
      names.add(((Element) found.item(i)).getAttribute("class"));
    }
    return names;
  }

  /** Nothing is drawn beyond the edges of the drawing, whatever the gate is like. */
  @ParameterizedTest
  @CsvSource({"1 m, 1 m", "5 m, 22 m", "20 m, 1 m", "20 m, 22 m"})
  void odd_gates_stay_within_the_paper(String opening, String run) {
    for (String support : List.of("track", "cantilever")) {
      GateShape shape =
          shape("opening", opening, "chain-span", run, "support", support, "chain-sag", "1500");
      Element svg = drawn(shape);
      assertThat(number(svg, "width")).isLessThanOrEqualTo(168);
      var rects = svg.getElementsByTagName("rect");
      for (int i = 0; i < rects.getLength(); i++) {
        Element rect = (Element) rects.item(i);
        assertThat(number(rect, "x")).isGreaterThanOrEqualTo(0);
        assertThat(number(rect, "x") + number(rect, "width"))
            .isLessThanOrEqualTo(number(svg, "width"));
        assertThat(number(rect, "y") + number(rect, "height"))
            .isLessThanOrEqualTo(number(svg, "height"));
      }
    }
  }

  @Test
  void places_are_numbered_in_the_order_in_which_they_come_up() {
    Spots spots = new Spots(shape());

    assertThat(spots.number(Optional.of(Spot.CHAIN))).contains(1);
    assertThat(spots.number(Optional.of(Spot.OPERATOR))).contains(2);
    assertThat(spots.number(Optional.of(Spot.CHAIN))).contains(1);
    assertThat(spots.legend()).isEqualTo("1 chain; 2 operator");
  }

  /** A card of the shipped rule base without a place is one that is asked of nobody there. */
  @Test
  void measured_checks_have_a_place() {
    assertThat(Shipped.BASE.checks().values())
        .filteredOn(c -> c.measured() && !c.area().equals("use"))
        .allSatisfy(c -> assertThat(Spot.of(c)).as(c.id()).isPresent());
  }
}
