package yett.record.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import yett.interview.moment.Moment;
import yett.interview.site.SiteFacts;
import yett.interview.state.CaseState.Answered;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.quantity.Units;

/**
 * The dimensions from which a gate is drawn, in metres. The opening reaches from 0, at the closing
 * edge of the closed leaf, to the post behind which the operator stands.
 *
 * @param idler where the long free run of the chain ends, at the operator
 * @param bracket where it begins, on the leaf
 * @param sag of that run
 * @param units in which the opening is written
 * @param assumed what nobody has given and is drawn as usual
 */
public record GateShape(
    double opening,
    boolean cantilever,
    boolean boarded,
    double leaf,
    double idler,
    double bracket,
    double sag,
    boolean marker,
    int beams,
    boolean edges,
    boolean loops,
    Units units,
    List<String> assumed) {
  /**
   * Height of most gates. The rule base does not ask for it, and the drawing says that it is
   * assumed.
   */
  static final double HEIGHT = 1.8;

  /** How far the closed leaf reaches beyond the opening at its end. */
  static final double BEYOND = 0.1;

  /** From the post to the nearest idler of the operator. */
  private static final double TO_IDLER = 0.2;

  /** How far a leaf on a track reaches behind its operator. */
  private static final double TAIL = 0.9;

  /** Length of a cantilever leaf in openings; common practice. */
  private static final double COUNTERWEIGHT = 1.4;

  private static final String SAG = "chain-sag";

  /** Sag as a share of the run, the middle of the values that handbooks recommend. */
  private static final double USUAL_SAG = 0.013;

  public GateShape {
    assumed = List.copyOf(assumed);
  }

  /** The shape according to the answers of the case. */
  public static GateShape of(Moment moment, RuleBase base) {
    Map<String, String> told = moment.state().told().site();
    Map<String, String> site = new SiteFacts(base).answers(told);
    List<String> assumed = new ArrayList<>();
    double opening = metres(base, site, "opening", 5);
    if (!told.containsKey("opening")) {
      assumed.add("opening " + base.units().in(site.getOrDefault("opening", "5 m")));
    }
    boolean cantilever = is(site, "support", "cantilever");
    double leaf = cantilever ? COUNTERWEIGHT * opening : opening + BEYOND + TAIL;
    assumed.add("length and height of the leaf");
    double idler = opening + TO_IDLER;
    double bracket = 0;
    if (told.containsKey("chain-span")) {
      double run = metres(base, site, "chain-span", idler);
      bracket = Math.max(-BEYOND, idler - run);
      idler = Math.max(idler, bracket + run);
    } else {
      assumed.add("length of the chain's run");
    }
    OptionalDouble sag = sag(moment);
    if (sag.isEmpty()) {
      assumed.add("sag of the chain");
    }
    return new GateShape(
        opening,
        cantilever,
        is(site, "leaf-face", "boarded"),
        Math.max(leaf, idler + TAIL - BEYOND),
        idler,
        bracket,
        sag.orElse(USUAL_SAG * (idler - bracket)),
        is(site, "marker", "fitted"),
        is(site, "beams", "two") ? 2 : is(site, "beams", "one") ? 1 : 0,
        is(site, "edges", "fitted"),
        is(site, "loops", "fitted"),
        base.units(),
        assumed);
  }

  /** The sag as it was found first, which is what the drawing shows. */
  private static OptionalDouble sag(Moment moment) {
    return moment.state().answers().stream()
        .filter(a -> a.check().equals(SAG))
        .map(Answered::answer)
        .flatMap(a -> a.reading().stream())
        .mapToDouble(r -> r.value() / 1000)
        .findFirst();
  }

  private static boolean is(Map<String, String> site, String question, String answer) {
    return answer.equals(site.get(question));
  }

  private static double metres(
      RuleBase base, Map<String, String> site, String question, double otherwise) {
    SiteQuestion card = base.siteQuestions().get(question);
    return card == null || card.measures().isEmpty() || !site.containsKey(question)
        ? otherwise
        : card.measures().get().parse(site.get(question)) / 1000;
  }

  /** Position of the tail of the closed leaf. */
  double tail() {
    return leaf - BEYOND;
  }

  /** Whether this gate has the place, so that the drawing can point to it. */
  public boolean has(Spot spot) {
    return switch (spot) {
      case MARKER -> marker;
      case BEAM -> beams > 0;
      case EDGE -> edges;
      case LOOP -> loops;
      default -> true;
    };
  }
}
