package yett.command.diagnose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.console.Block;
import yett.console.Text;
import yett.interview.SiteFacts;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/** The gate as installed on a screen, whole or as far as it matters now. */
record SiteViews(RuleBase base) {
  /**
   * Lines of the page, numbered through: what was told each by itself, the usual as one paragraph.
   *
   * @param rest how many further ones there are, which are not shown
   */
  List<Block> page(List<SiteQuestion> questions, Map<String, String> told, int rest) {
    Map<String, String> all = new SiteFacts(base).answers(told);
    List<Block.Item> known = new ArrayList<>();
    List<String> usual = new ArrayList<>();
    int number = 0;
    for (SiteQuestion question : questions) {
      String place = Integer.toString(++number);
      String value = question.said(all.get(question.id()));
      if (told.containsKey(question.id())) {
        Text text = Text.of(question.name() + ": ").and(Text.strong(value));
        known.add(new Block.Item(place, text, Optional.empty()));
      } else {
        usual.add(place + "\u00a0" + question.name() + ": " + value);
      }
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("The gate as installed"));
    if (!known.isEmpty()) {
      blocks.add(new Block.Numbered(known));
    }
    if (!usual.isEmpty()) {
      blocks.add(
          Block.paragraph(Text.dim("Taken as usual: ").and(String.join("; ", usual)).and(".")));
    }
    if (rest > 0) {
      blocks.add(
          Block.paragraph(
              Text.dim(
                  rest
                      + (rest == 1
                          ? " more is asked when it first matters"
                          : " more are asked when they first matter")
                      + ", or shown and changed by ?.")));
    }
    return blocks;
  }

  /** What the next step goes by, taken as usual so far. */
  List<Block> needed(List<SiteQuestion> questions, Map<String, String> told) {
    Map<String, String> all = new SiteFacts(base).answers(told);
    return List.of(
        Block.heading("What comes next goes by this gate"),
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

  /** One line by itself, with what hangs on it. */
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
