package yett.command.gates;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import yett.console.Block;
import yett.figures.GateHistory.Past;
import yett.interview.site.SiteFacts;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.wording.GateWords;
import yett.wording.Wording;

/** Shows gates on a screen. */
final class GateViews {
  private static final DateTimeFormatter DAY = DateTimeFormatter.ISO_LOCAL_DATE;

  private final RuleBase base;
  private final Wording words;

  GateViews(RuleBase base) {
    this.base = base;
    this.words = new Wording(base);
  }

  static String day(Instant at) {
    return DAY.format(at.atZone(ZoneId.systemDefault()));
  }

  /**
   * What was said of a gate, in one line. Usual answers that nobody gave for this gate are left
   * out.
   */
  String line(Gates.Gate gate) {
    return gate.told()
        .map(told -> new GateWords(base).toldLine(told))
        .map(line -> line.isEmpty() ? "size and supply taken as usual" : line)
        .orElse("not described yet");
  }

  List<Block> list(List<Gates.Gate> gates) {
    List<Block> blocks = new ArrayList<>();
    List<Block.Row> rows = new ArrayList<>();
    for (Gates.Gate gate : gates) {
      String visit =
          gate.history().lastVisit().map(at -> "last visit " + day(at)).orElse("never visited");
      rows.add(Block.row(gate.name(), line(gate) + "; " + visit + "; " + cases(gate)));
    }
    blocks.add(new Block.Rows(rows));
    blocks.add(
        Block.paragraph(
            (gates.size() == 1 ? "1 gate" : gates.size() + " gates")
                + ". The page of one: gates show GATE."));
    return blocks;
  }

  private static String cases(Gates.Gate gate) {
    int all = gate.history().cases().size() + gate.unread();
    long open = gate.history().open();
    return (all == 0 ? "no case yet" : all == 1 ? "1 case" : all + " cases")
        + (open == 0 ? "" : ", " + open + " open")
        + (gate.unread() == 0 ? "" : ", " + gate.unread() + " cannot be read");
  }

  /**
   * The answers about a gate, by name of the question; the usual answer where nobody gave another.
   */
  Map<String, String> described(Map<String, String> told) {
    Map<String, String> described = new LinkedHashMap<>();
    new SiteFacts(base)
        .answers(told)
        .forEach(
            (id, answer) -> {
              SiteQuestion question = base.siteQuestions().get(id);
              described.put(question.name(), Wording.site(question, answer));
            });
    return described;
  }

  /**
   * The page of one gate.
   *
   * @param results what its inspections found, by number of the case
   */
  List<Block> page(Gates.Gate gate, List<String> formerNames, Map<String, String> results) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading(gate.name()));
    if (!formerNames.isEmpty()) {
      blocks.add(Block.paragraph("Formerly: " + String.join("; ", formerNames) + "."));
    }
    blocks.add(Block.paragraph(line(gate) + "; " + cases(gate) + "."));
    gate.told()
        .map(told -> new GateWords(base).usualLine(told))
        .filter(usual -> !usual.isEmpty())
        .ifPresent(
            usual ->
                blocks.add(Block.paragraph("Not entered, so assumed as usual: " + usual + ".")));
    gate.told().filter(told -> !told.isEmpty()).ifPresent(told -> blocks.addAll(site(told)));
    blocks.add(Block.heading("Visits and calls"));
    blocks.add(
        gate.history().cases().isEmpty()
            ? Block.paragraph("None yet.")
            : new Block.Rows(gate.history().cases().stream().map(p -> row(p, results)).toList()));
    return blocks;
  }

  private List<Block> site(Map<String, String> told) {
    SiteFacts facts = new SiteFacts(base);
    List<Block.Row> rows = new ArrayList<>();
    facts
        .answers(told)
        .forEach(
            (id, answer) -> {
              SiteQuestion question = base.siteQuestions().get(id);
              boolean ofTheDay = id.equals(SiteQuestion.TEMPERATURE_TODAY);
              if (answer.equals(told.get(id)) && !ofTheDay) {
                rows.add(Block.row(question.name(), Wording.site(question, answer)));
              }
            });
    List<Block> blocks = new ArrayList<>();
    if (!rows.isEmpty()) {
      blocks.add(Block.heading("As installed"));
      blocks.add(new Block.Rows(rows));
      blocks.add(Block.paragraph("Nobody entered anything else; the usual is assumed."));
    }
    return blocks;
  }

  private Block.Row row(Past past, Map<String, String> results) {
    String day = day(past.onSite().orElse(past.opened()));
    String numbered = "case " + past.id() + ", " + past.ending().map(e -> e.words()).orElse("open");
    if (past.inspection().isPresent()) {
      String kind = "inspection for " + past.inspection().get().word() + ", ";
      return Block.row(day, kind + numbered + (". " + results.getOrDefault(past.id(), "")).strip());
    }
    String found = past.cause().isEmpty() ? "nothing found yet" : words.cause(past.cause());
    String done =
        past.repairs().isEmpty()
            ? "nothing repaired"
            : past.repairs().stream().map(words::repair).collect(Collectors.joining("; "));
    return Block.row(
        day,
        numbered
            + (past.onSite().isEmpty() ? ", nobody was there" : "")
            + ". Most probable: "
            + found
            + ". Done: "
            + done
            + ".");
  }
}
