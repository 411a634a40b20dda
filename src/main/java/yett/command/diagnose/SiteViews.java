package yett.command.diagnose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import yett.console.Block;
import yett.console.Text;
import yett.interview.SiteFacts;
import yett.knowledge.RuleBase;
import yett.knowledge.SiteQuestion;

/** The gate as installed: what is known of it, and one question about it. */
public final class SiteViews {
  private final RuleBase base;

  SiteViews(RuleBase base) {
    this.base = base;
  }

  List<Block> site(List<SiteQuestion> questions, Map<String, String> answers) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("The gate as installed"));
    List<Block.Item> known = new ArrayList<>();
    List<String> usual = new ArrayList<>();
    Map<String, String> all = new SiteFacts(base).answers(answers);
    int number = 0;
    for (SiteQuestion question : questions) {
      String value = answer(question, all.get(question.id()));
      String place = Integer.toString(++number);
      if (answers.containsKey(question.id())) {
        Text text = Text.of(question.name() + ": ").and(Text.strong(value));
        known.add(new Block.Item(place, text, Optional.empty()));
      } else {
        usual.add(place + "\u00a0" + question.name() + ": " + value);
      }
    }
    if (!known.isEmpty()) {
      blocks.add(new Block.Numbered(known));
    }
    if (!usual.isEmpty()) {
      blocks.add(
          Block.paragraph(Text.dim("Taken as usual: ").and(String.join("; ", usual)).and(".")));
    }
    return blocks;
  }

  /** An answer as people read it: the words of a choice, a reading with its unit. */
  public static String answer(SiteQuestion question, String answer) {
    return question
        .measures()
        .map(m -> m.show(m.parse(answer)))
        .orElseGet(() -> question.choices().getOrDefault(answer, answer));
  }

  List<Block> question(SiteQuestion question, String now) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.paragraph(Text.strong(question.ask())));
    if (!question.why().isEmpty()) {
      blocks.add(Block.paragraph(Text.dim(question.why())));
    }
    if (!question.choices().isEmpty()) {
      blocks.add(Block.numbered(List.copyOf(question.choices().values())));
    }
    blocks.add(Block.rows(Block.row("Now", answer(question, now))));
    return blocks;
  }
}
