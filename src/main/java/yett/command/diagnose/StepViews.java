package yett.command.diagnose;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import yett.belief.Decibans;
import yett.console.Block;
import yett.console.SignalWord;
import yett.console.Text;
import yett.interview.Interview;
import yett.interview.Moment;
import yett.interview.Occasion;
import yett.interview.Prospects;
import yett.interview.Step;
import yett.interview.Trail;
import yett.knowledge.Caution;
import yett.knowledge.Check;
import yett.knowledge.Measures;
import yett.knowledge.Repair;
import yett.knowledge.Role;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.knowledge.SiteQuestion;
import yett.plan.Advice;
import yett.rules.Conclusion.Expectation;
import yett.wording.Figures;
import yett.wording.StepWords;
import yett.wording.Wording;

/** Each step of an interview as blocks of text, in the order in which it is best read or heard. */
public final class StepViews {
  private final RuleBase base;
  private final StepWords reasons;

  /** Cautions shown in full at this sitting; from then on a reminder is enough. */
  private final Set<String> cautioned = new HashSet<>();

  public StepViews(RuleBase base) {
    this.reasons = new StepWords(base);
    this.base = base;
  }

  public List<Block> dangers(Step.AskDangers step, Role role) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Before anything else"));
    boolean reserved = step.dangers().stream().noneMatch(c -> c.who() == Role.CALLER);
    blocks.add(
        Block.paragraph(
            reserved
                ? step.dangers().stream()
                    .map(c -> c.ask() + " " + c.how())
                    .collect(Collectors.joining(" "))
                : (role == Role.CALLER ? "Read out. " : "")
                    + "Is any of this so at the gate now? Look from two metres away and touch"
                    + " nothing."));
    List<Block.Item> items = new ArrayList<>();
    int number = 0;
    for (Check danger : step.dangers()) {
      for (Check.Outcome outcome : danger.outcomes().subList(1, danger.outcomes().size())) {
        items.add(Block.item(Integer.toString(++number), Wording.capital(outcome.text())));
      }
    }
    blocks.add(new Block.Numbered(items));
    return blocks;
  }

  /** An answer as people read it: the words of a choice, a reading with its unit. */
  public static String siteAnswer(SiteQuestion question, String answer) {
    return question.said(answer);
  }

  public List<Block> picking(String heading, String text, List<String> names) {
    return List.of(Block.heading(heading), Block.paragraph(text), Block.numbered(names));
  }

  public List<Block> ask(Step.Ask step, Moment moment, int number) {
    Check check = step.check();
    boolean proof = check.kind() == Check.Kind.PROOF;
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading((proof ? "Proof" : "Check " + number) + effort(check)));
    if (!proof) {
      occasion(step.occasion()).ifPresent(blocks::add);
    }
    blocks.add(Block.paragraph(Text.strong(check.ask())));
    List<Block.Row> rows = new ArrayList<>();
    if (!check.how().isEmpty()) {
      rows.add(Block.row("How", check.how()));
    }
    step.expectation().ifPresent(e -> rows.add(Block.row("Usual", usual(check, e))));
    blocks.add(new Block.Rows(rows));
    blocks.addAll(cautions(step.cautions()));
    blocks.add(answers(step, moment));
    return blocks;
  }

  /** Why it comes up, where that is more than its worth. */
  private static Optional<Block> occasion(Occasion occasion) {
    return Optional.of(StepWords.occasion(occasion))
        .filter(words -> !words.isEmpty())
        .map(words -> Block.paragraph(Text.dim(Wording.capital(words) + ".")));
  }

  private static String effort(Check check) {
    String minutes = check.minutes() > 0 ? " · " + Figures.minutes(check.minutes()) : "";
    return minutes + instrument(check).map(i -> " · " + i).orElse("");
  }

  /** What a check needs in the hand, in words. */
  public static Optional<String> instrument(Check check) {
    return check
        .measures()
        .map(Measures::instrument)
        .filter(i -> !i.equals("eye"))
        .map(i -> i.replace('-', ' '));
  }

  public static String usual(Check check, Expectation expectation) {
    Measures measures = check.measures().orElseThrow();
    return measures.showRounded(expectation.low())
        + " to "
        + measures.showRounded(expectation.high())
        + " on this gate: "
        + expectation.how()
        + " ("
        + expectation.reason().source()
        + ")";
  }

  /** The possible answers with their chance and what each would make most probable. */
  private Block answers(Step.Ask step, Moment moment) {
    Check check = step.check();
    List<Block.Item> items = new ArrayList<>();
    int number = 0;
    for (Prospects.Prospect prospect : Prospects.of(moment.belief(), check, step.expectation())) {
      number++;
      String label = check.measured() ? "·" : Integer.toString(number);
      String words =
          check.measured()
              ? prospect.range().isEmpty()
                  ? prospect.outcome().id()
                  : prospect.range() + " (" + prospect.outcome().id().replace('-', ' ') + ")"
              : prospect.outcome().text();
      items.add(
          Block.item(
              label,
              words,
              Figures.percent(prospect.chance()) + "; then " + leading(moment, prospect.then())));
    }
    return new Block.Numbered(items);
  }

  private String leading(Moment moment, double[] chances) {
    int best = 0;
    for (int c = 1; c < chances.length; c++) {
      if (chances[c] > chances[best]) {
        best = c;
      }
    }
    String id = moment.belief().model().causes().get(best);
    return base.causes().get(id).name().toLowerCase(Locale.ROOT)
        + " "
        + Figures.percent(chances[best]);
  }

  /** The same for somebody on the telephone: to read out, in everyday words, once. */
  public List<Block> spoken(List<Caution> cautions) {
    Map<String, String> lay = base.telephone().cautions();
    List<Block> blocks = new ArrayList<>();
    for (Caution caution : cautions) {
      if (cautioned.add(caution.id())) {
        String text = lay.getOrDefault(caution.id(), "");
        blocks.add(
            Block.signal(
                SignalWord.valueOf(caution.word().name()),
                "Read out: " + (text.isEmpty() ? caution.text() : text)));
      }
    }
    return blocks;
  }

  /** Cautions in full the first time at this sitting, afterwards as a reminder. */
  public List<Block> cautions(List<Caution> cautions) {
    List<Block> blocks = new ArrayList<>();
    for (Caution caution : cautions) {
      boolean first = cautioned.add(caution.id());
      blocks.add(
          Block.signal(
              SignalWord.valueOf(caution.word().name()), first ? caution.text() : caution.avoid()));
    }
    return blocks;
  }

  /** What a set-up is for and what is dangerous in it. */
  public List<Block> entering(Step.Enter step) {
    SetUp setUp = step.setUp();
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.heading("Set-up: " + setUp.name() + " · " + Figures.minutes(setUp.enterMinutes())));
    blocks.add(Block.rows(Block.row("For", reasons.purpose(step.purpose()))));
    blocks.addAll(cautions(step.cautions()));
    return blocks;
  }

  /** What is left and what for; the steps come after it. */
  public List<Block> leave(Step.Leave step) {
    SetUp setUp = step.setUp();
    return List.of(
        Block.heading("Leave: " + setUp.name() + " · " + Figures.minutes(setUp.leaveMinutes())),
        Block.rows(Block.row("For", reasons.purpose(step.purpose()))));
  }

  /** The plan of work, then the repair in hand. */
  public List<Block> mend(Step.Mend step, Moment moment) {
    List<Block> blocks = new ArrayList<>();
    step.plan().ifPresent(plan -> blocks.addAll(plan(plan, moment)));
    Repair repair = step.repair();
    blocks.add(
        Block.heading("Repair: " + repair.name() + " · " + Figures.minutes(repair.minutes())));
    occasion(step.occasion()).ifPresent(blocks::add);
    blocks.addAll(cautions(step.cautions()));
    if (!repair.parts().isEmpty()) {
      String parts =
          repair.parts().stream().map(Repair.Part::part).collect(Collectors.joining("; "));
      blocks.add(Block.rows(Block.row("Parts", parts)));
    }
    blocks.add(Block.numbered(repair.steps()));
    return blocks;
  }

  private List<Block> plan(Advice plan, Moment moment) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Block.heading("Plan of work"));
    blocks.add(
        Block.paragraph(
            "No further check is worth its time. After each repair the gate is tried."));
    List<Block.Item> items = new ArrayList<>();
    int number = 0;
    for (Advice.Job job : plan.jobs()) {
      Repair repair = base.repairs().get(job.repair());
      items.add(
          Block.item(
              Integer.toString(++number), repair.name(), particulars(repair, job, number, moment)));
    }
    blocks.add(new Block.Numbered(items));
    return blocks;
  }

  private String particulars(Repair repair, Advice.Job job, int number, Moment moment) {
    List<String> words = new ArrayList<>();
    words.add(Figures.minutes(repair.minutes()));
    if (number > 1) {
      words.add("its turn comes with " + Figures.percent(job.chance()));
    }
    double[] now = moment.belief().remaining();
    repair.removes().keySet().stream()
        .map(id -> now[moment.belief().model().indexOf(id)])
        .max(Double::compare)
        .ifPresent(
            chance -> words.add("for a cause that is there with " + Figures.percent(chance)));
    if (!repair.needs().isEmpty()) {
      words.add(
          repair.needs().stream()
              .map(id -> base.setUps().get(id).name().toLowerCase(Locale.ROOT))
              .collect(Collectors.joining("; ", "with ", "")));
    }
    if (!repair.parts().isEmpty()) {
      words.add(
          "parts: "
              + repair.parts().stream().map(Repair.Part::part).collect(Collectors.joining("; ")));
    }
    if (!repair.entails().isEmpty()) {
      words.add("afterwards: " + names(repair.entails()));
    }
    return String.join("; ", words);
  }

  private String names(List<String> cards) {
    return cards.stream()
        .map(
            id ->
                base.repairs().containsKey(id)
                    ? base.repairs().get(id).name().toLowerCase(Locale.ROOT)
                    : "check " + id.replace('-', ' '))
        .collect(Collectors.joining(", "));
  }

  public List<Block> stop(Step.MakeSafe step) {
    return List.of(
        Block.rule(),
        Block.signal(
            SignalWord.DANGER, step.stop().name() + ". " + Wording.capital(step.because()) + "."),
        Block.paragraph("Now, in this order:"),
        Block.numbered(step.now()));
  }

  /** What an answer was taken to mean and how far it moved the belief. */
  public List<Block> taken(Moment before, Moment after, Check check) {
    List<Block> blocks = new ArrayList<>();
    List<Trail.Move> moves = after.trail().moves();
    Optional<Trail.Move> move =
        moves.stream().filter(m -> m.subject().equals(check.id())).reduce((a, b) -> b);
    if (move.isEmpty()) {
      return blocks;
    }
    String meaning = reading(after, check) + Wording.meaning(check, move.get().words());
    blocks.add(
        Block.paragraph(
            Text.of("Taken as: ")
                .and(Text.strong(meaning))
                .and(". " + movement(move.get(), after))));
    blocks.addAll(news(before, after));
    return blocks;
  }

  /** What the rules say besides since then, and answers that hardly go together. */
  List<Block> news(Moment before, Moment after) {
    List<Block> blocks = new ArrayList<>();
    after.judgement().remarks().stream()
        .filter(r -> !before.judgement().remarks().contains(r))
        .forEach(r -> blocks.add(Block.paragraph("Note: " + r.text())));
    after
        .conflict()
        .filter(c -> !before.conflict().equals(after.conflict()))
        .ifPresent(c -> blocks.add(Block.paragraph(c.words(base) + " \"correct\" changes one.")));
    return blocks;
  }

  /** The value of a reading as it was understood, before its meaning. */
  private static String reading(Moment moment, Check check) {
    return moment
        .state()
        .latest(check.id())
        .flatMap(a -> a.answer().reading())
        .map(r -> check.measures().orElseThrow().show(r.value()) + ", ")
        .orElse("");
  }

  /** The causes that a move shifted most, with the evidence in decibans. */
  public String movement(Trail.Move move, Moment moment) {
    List<String> ids = moment.belief().model().causes();
    String words =
        IntStream.range(0, ids.size())
            .boxed()
            .filter(c -> Math.abs(move.after()[c] - move.before()[c]) >= 0.01)
            .sorted(
                (a, b) ->
                    Double.compare(
                        Math.abs(move.after()[b] - move.before()[b]),
                        Math.abs(move.after()[a] - move.before()[a])))
            .limit(3)
            .map(
                c ->
                    base.causes().get(ids.get(c)).name()
                        + " "
                        + Figures.percent(move.before()[c])
                        + " to "
                        + Figures.percent(move.after()[c])
                        + " ("
                        + Figures.decibans(Decibans.between(move.before()[c], move.after()[c]))
                        + ")")
            .collect(Collectors.joining("; "));
    return words.isEmpty() ? "The belief hardly moves." : words + ".";
  }

  /** The most probable causes as bars. */
  public Block bars(Moment moment, int most) {
    List<Block.Bar> bars =
        Interview.ranking(moment, base).stream()
            .filter(r -> r.chance() >= 0.005)
            .limit(most)
            .map(
                r ->
                    new Block.Bar(
                        r.cause().name(), Math.min(1, r.chance()), Figures.percent(r.chance())))
            .toList();
    return new Block.Bars(bars);
  }

  public static String quoted(String words) {
    return "\"" + words + "\"";
  }
}
