package yett.e2e;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.stream.Collectors;
import yett.knowledge.Check;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;

/**
 * Somebody at the gate of a {@link Story}, who reads each question on the screen and types the
 * answer. The program decides which questions come, and in what order.
 */
final class Visitor implements AutoCloseable {
  static final Duration PATIENCE = Duration.ofMinutes(5);
  private static final RuleBase BASE = RuleBase.read(KnowledgeSource.folder(Path.of("knowledge")));

  private final Pty pty;
  private final Story story;
  private final List<String> asked;
  private final Set<String> repaired;
  private Screen screen;
  private Screen question;

  private Visitor(Pty pty, Story story, List<String> asked, Set<String> repaired) {
    this.pty = pty;
    this.story = story;
    this.asked = asked;
    this.repaired = repaired;
    look();
  }

  /** Starts the packaged program in a window of 80 by 24 and waits for its first prompt. */
  static Visitor at(Story story, Path home, String... arguments) {
    return at(story, home, Map.of(), 80, arguments);
  }

  static Visitor at(
      Story story, Path home, Map<String, String> environment, int columns, String... arguments) {
    Map<String, String> all = new HashMap<>(environment);
    all.put("YETT_HOME", home.toString());
    Pty pty = Pty.start(Programs.packaged(arguments), all, columns, 24);
    try {
      return new Visitor(pty, story, new ArrayList<>(), new HashSet<>());
    } catch (AssertionError e) {
      pty.close();
      throw e;
    }
  }

  /** What appeared after the last line. */
  Screen screen() {
    return screen;
  }

  /** The last screen that asked something new; it is the one that waits for an answer. */
  Screen question() {
    return question;
  }

  Screen.Kind kind() {
    return question.kind().orElseThrow();
  }

  Pty pty() {
    return pty;
  }

  /** What was asked and answered so far: ids of checks, and names of the other prompts. */
  List<String> asked() {
    return List.copyOf(asked);
  }

  /** Types a line and waits for the next prompt. */
  Screen say(String line) {
    pty.enter(line);
    return look();
  }

  /** Presses a key that works without Enter. */
  Screen press(String key) {
    pty.type(key);
    return look();
  }

  private Screen look() {
    screen = new Screen(pages());
    if (question == null || screen.kind().isPresent()) {
      question = screen;
    }
    return screen;
  }

  /** Everything that is shown up to the next prompt, all pages. */
  private String pages() {
    StringBuilder pages = new StringBuilder(pty.readTo(Screen.PROMPT, PATIENCE));
    for (Matcher more = Screen.MORE.matcher(pages); more.find(); more.reset(pages)) {
      pages.setLength(more.start());
      pty.enter("");
      pages.append(pty.readTo(Screen.PROMPT, PATIENCE));
    }
    return pages.toString();
  }

  /** Answers truthfully until a prompt of this kind waits. */
  Screen until(Screen.Kind kind) {
    return until(EnumSet.of(kind));
  }

  Screen until(Set<Screen.Kind> kinds) {
    for (int turns = 0; turns < 120; turns++) {
      if (kinds.contains(kind())) {
        return question;
      }
      answer();
    }
    throw new AssertionError("No end to the questions:\n" + pty.transcript());
  }

  /** Answers the waiting prompt. */
  Screen answer() {
    if (!screen.prompt().equals(question.prompt())) {
      throw new AssertionError("Nobody knows what to type here:\n" + screen.text());
    }
    if (kind() == Screen.Kind.LOOKS) {
      looks().forEach(look -> asked.add(look.id()));
    } else {
      asked.add(check().map(Check::id).orElse(kind().name()));
    }
    return say(truth());
  }

  /** The true answer to the waiting prompt. */
  String truth() {
    return switch (kind()) {
      case DANGERS, GONE -> "0";
      case SITE, SITE_NEEDED, CAUTIONS, DISAGREEMENT -> "";
      case COMPLAINTS -> String.join(", ", story.complaints()); // the list has more than a page
      case HISTORY -> story.history().isEmpty() ? "0" : String.join(", ", story.history());
      case SET_UP -> "done";
      case REPAIR -> {
        repaired.add(repair().id());
        yield "done";
      }
      case RETEST -> cured() ? "1" : "2";
      case SURE, COMING_BACK -> "yes";
      case SETTLE -> "3";
      case STOCK -> "1";
      case CHECK, PROOF -> truth(check().orElseThrow());
      case LOOKS ->
          looks().stream()
              .map(this::look)
              .filter(l -> !l.isEmpty())
              .collect(Collectors.joining(", "));
      case CLOSE -> "close";
      default -> throw new AssertionError("It should not come to this:\n" + question.text());
    };
  }

  private boolean cured() {
    return repaired.containsAll(story.repairs());
  }

  /** The looks of the round on the screen. */
  private List<Check> looks() {
    return BASE.checks().values().stream()
        .filter(check -> check.place().isPresent() && question.shows(" " + check.ask() + " – "))
        .toList();
  }

  /** A line that gives the same sign for all looks of the round. */
  String allLooks(String sign) {
    return sign + "1-" + looks().size();
  }

  /** The answer to one look; empty if it is ordinary. */
  private String look(Check check) {
    int number = question.numberOf(check.ask());
    boolean mended = !repaired.isEmpty() && cured();
    String known = mended ? null : story.answers().get(check.id());
    if (known == null) {
      return !mended && story.othersUsual() ? "" : "?" + number;
    }
    int outcome = check.indexOf(known);
    return outcome == 0 ? "" : number + Character.toString('a' + outcome);
  }

  /**
   * The true answer to a check. The story describes the gate with its fault only; what it shows
   * after the repair is not known.
   */
  private String truth(Check check) {
    boolean mended = !repaired.isEmpty() && cured();
    String known = mended ? null : story.answers().get(check.id());
    if (known == null && !mended && story.othersUsual() && usualCanBeSaid(check)) {
      known = check.outcomes().get(0).id();
    }
    if (known == null) {
      return check.kind() == Check.Kind.PROOF ? "1" : "unknown";
    }
    return check.measured()
        ? known
        : Integer.toString(
            question.numberOf(check.outcomes().get(check.indexOf(known)).text() + " –"));
  }

  /** Whether the ordinary answer can be given in words; a reading would have to be invented. */
  private static boolean usualCanBeSaid(Check check) {
    return check.kind() == Check.Kind.CHECK && !check.measured();
  }

  /** The check that is asked, if it is one. */
  Optional<Check> check() {
    if (kind() != Screen.Kind.CHECK && kind() != Screen.Kind.PROOF) {
      return Optional.empty();
    }
    return Optional.of(
        BASE.checks().values().stream()
            .filter(check -> question.shows(check.ask()))
            .max(Comparator.comparing(check -> check.ask().length()))
            .orElseThrow(() -> new AssertionError("A question of no card:\n" + question.text())));
  }

  /** The id of the check that is asked. */
  String checkId() {
    return check().map(Check::id).orElseThrow();
  }

  private Repair repair() {
    return BASE.repairs().values().stream()
        .filter(repair -> question.shows("Repair: " + repair.name() + " ·"))
        .findFirst()
        .orElseThrow(() -> new AssertionError("A repair of no card:\n" + question.text()));
  }

  @Override
  public void close() {
    pty.close();
  }
}
