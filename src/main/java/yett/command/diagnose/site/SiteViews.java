package yett.command.diagnose.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.console.Block;
import yett.console.Text;
import yett.interview.site.SiteFacts;
import yett.interview.step.Step;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;
import yett.wording.GateWords;

/** Shows the gate as installed, in full or as far as it matters now. */
public record SiteViews(RuleBase base) {
  /**
   * Numbered lines of the page: each answer that was given and matters on its own line, the usual
   * ones as a paragraph.
   *
   * @param rest further questions, which are not shown
   */
  public List<Block> page(
      List<SiteQuestion> questions, Map<String, String> told, List<SiteQuestion> rest) {
    Map<String, String> all = new SiteFacts(base).answers(told);
    List<Block.Item> known = new ArrayList<>();
    List<String> toldUsual = new ArrayList<>();
    List<String> usual = new ArrayList<>();
    int number = 0;
    for (SiteQuestion question : questions) {
      String place = Integer.toString(++number);
      String value = question.said(all.get(question.id()));
      if (matters(question, told)) {
        Text text = Text.of(question.name() + ": ").and(Text.strong(value));
        known.add(new Block.Item(place, text, Optional.empty()));
      } else {
        (told.containsKey(question.id()) ? toldUsual : usual)
            .add(place + "\u00a0" + question.name() + ": " + value);
      }
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("The gate as installed"));
    if (!known.isEmpty()) {
      blocks.add(new Block.Numbered(known));
    }
    paragraph("Entered, and as usual: ", toldUsual).ifPresent(blocks::add);
    paragraph("Assumed as usual: ", usual).ifPresent(blocks::add);
    if (!rest.isEmpty()) {
      int knownMore = (int) rest.stream().filter(q -> told.containsKey(q.id())).count();
      blocks.add(Block.paragraph(Text.dim(more(knownMore, rest.size() - knownMore))));
    }
    return blocks;
  }

  /** All questions in one list, a line each, with what is only assumed marked. */
  List<Block> list(List<SiteQuestion> questions, Map<String, String> told) {
    Map<String, String> all = new SiteFacts(base).answers(told);
    List<Block.Item> items = new ArrayList<>();
    for (SiteQuestion question : questions) {
      Text value = Text.strong(question.said(all.get(question.id())));
      Text text = Text.of(question.name() + ": ").and(value);
      items.add(
          new Block.Item(
              Integer.toString(items.size() + 1),
              told.containsKey(question.id()) ? text : text.and(Text.dim(" (assumed)")),
              Optional.empty()));
    }
    return List.of(Block.heading("The gate as installed"), new Block.Numbered(items));
  }

  /**
   * Whether the answer was given and is worth a line, because it differs from most gates or tells
   * this gate from them.
   */
  public static boolean matters(SiteQuestion question, Map<String, String> told) {
    String answer = told.get(question.id());
    return answer != null && (GateWords.tells(question) || !question.isUsual(answer));
  }

  private static Optional<Block> paragraph(String lead, List<String> lines) {
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(Block.paragraph(Text.dim(lead).and(String.join("; ", lines)).and(".")));
  }

  private static String more(int known, int open) {
    List<String> parts = new ArrayList<>();
    if (known > 0) {
      parts.add(known + (known == 1 ? " more is known and usual" : " more are known and usual"));
    }
    if (open > 0) {
      parts.add(
          open
              + (open == 1
                  ? " more is asked when it first matters"
                  : " more are asked when they first matter"));
    }
    return String.join("; ", parts) + "; ? shows and changes all.";
  }

  /**
   * Details that a step depends on and for which the usual answer is assumed so far. Before the
   * first proof they are those that decide which proofs are made at all.
   */
  public List<Block> needed(Step step, List<SiteQuestion> questions, Map<String, String> told) {
    boolean proofs = step instanceof Step.Ask ask && ask.check().kind() == Check.Kind.PROOF;
    Map<String, String> all = new SiteFacts(base).answers(told);
    return List.of(
        Block.heading(
            proofs ? "Which proofs are made depends on this" : "The next step depends on this"),
        Block.paragraph(
            IntStream.range(0, questions.size())
                .mapToObj(
                    i ->
                        (questions.size() == 1 ? "" : i + 1 + "\u00a0")
                            + questions.get(i).name()
                            + ": "
                            + questions.get(i).said(all.get(questions.get(i).id())))
                .collect(Collectors.joining("; ", "", "."))));
  }

  /** One question on its own, with what depends on it. */
  List<Block> question(SiteQuestion question, String now) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.paragraph(Text.strong(question.ask())));
    if (!question.why().isEmpty()) {
      blocks.add(Block.paragraph(Text.dim(question.why())));
    }
    if (!question.choices().isEmpty()) {
      blocks.add(Block.numbered(List.copyOf(question.choices().values())));
    }
    blocks.add(Block.rows(Block.row("Now", question.said(now))));
    return blocks;
  }
}
