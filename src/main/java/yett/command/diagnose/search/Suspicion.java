package yett.command.diagnose.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import yett.command.common.Prompt;
import yett.command.diagnose.sitting.Choices;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.Text;
import yett.interview.course.OpenChecks;
import yett.interview.evidence.Prospects;
import yett.interview.moment.Moment;
import yett.interview.step.Step;
import yett.knowledge.Cause;
import yett.rules.Conclusion.Odds;
import yett.wording.Figures;
import yett.wording.Wording;

/**
 * Shows what speaks for and against a cause that the person suspects, and which check would settle
 * it.
 */
public final class Suspicion {
  private final Sitting sitting;
  private final CheckList checks;
  private final NamedCards<Cause> names;

  public Suspicion(Sitting sitting, CheckList checks) {
    this.sitting = sitting;
    this.checks = checks;
    this.names =
        new NamedCards<>(
            sitting.base().causes(),
            c -> true,
            Cause::name,
            this::texts,
            sitting.base().telephone().spoken().synonyms());
  }

  /** How a cause arises and what puts it right: "selector" is in no cause's name. */
  private List<String> texts(Cause cause) {
    List<String> texts = new ArrayList<>();
    texts.add(cause.arises());
    sitting.base().repairs().values().stream()
        .filter(r -> r.removes().containsKey(cause.id()))
        .forEach(r -> texts.add(r.name()));
    return texts;
  }

  /**
   * @param words id of a cause, or words of its name; if empty, the person is asked
   */
  public void look(String words) {
    String text = words.isEmpty() ? sitting.line("Which cause? Words from its name") : words;
    if (text.isEmpty()) {
      return;
    }
    List<Cause> found = names.nearest(text);
    if (found.isEmpty()) {
      sitting.say("No cause matches these words. Type belief to see the most probable ones.");
    } else if (found.size() == 1) {
      look(found.get(0));
    } else {
      new Choices(sitting)
          .of("Which cause? The first fits best", found, Cause::name)
          .ifPresent(this::look);
    }
  }

  private void look(Cause cause) {
    Moment moment = sitting.moment();
    Optional<Odds> impossible =
        moment.judgement().odds().stream()
            .filter(o -> o.cause().equals(cause.id()) && o.factor() == 0)
            .findFirst();
    if (impossible.isPresent()) {
      sitting.say(cause.name() + " cannot be here: " + impossible.get().reason().words() + ".");
      return;
    }
    sitting.screen(sitting.beliefs().of(moment, cause));
    if (moment.state().told().histories().isEmpty() || moment.step() instanceof Step.Finished) {
      return;
    }
    checks
        .open()
        .settling(cause.id())
        .ifPresentOrElse(
            s -> settle(s, cause),
            () -> sitting.say("None of the checks you can make now would tell more about it."));
  }

  private void settle(OpenChecks.Settling settling, Cause cause) {
    Moment moment = sitting.moment();
    int c = moment.belief().model().indexOf(cause.id());
    List<Block.Item> items = new ArrayList<>();
    for (Prospects.Prospect p :
        Prospects.of(moment.belief(), settling.open().check(), Optional.empty())) {
      items.add(
          Block.item(
              "·",
              Wording.meaning(settling.open().check(), p.outcome().id()),
              Figures.percent(p.chance())
                  + "; the cause is then at "
                  + Figures.percent(p.then()[c])));
    }
    sitting.screen( // a page by itself, or the head of the first one leaves the window
        List.of(
            Block.heading("The check that tells most · " + OpenCheckViews.costs(settling.open())),
            Block.paragraph(Text.strong(settling.open().check().ask())),
            new Block.Numbered(items)));
    boolean next =
        sitting.until(
            "yes to make it next, Enter to keep to the plan",
            line ->
                Prompt.word(line, List.of("yes", "y", "1", "", "no", "n", "0", "2"))
                    .map(i -> Prompt.Reading.of(i < 3))
                    .orElse(Prompt.Reading.again("Type yes, or just press Enter.")));
    if (next) {
      checks.next(settling.open().check());
    }
  }
}
