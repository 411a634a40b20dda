package yett.command.diagnose.danger;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import yett.command.common.CannotTellWords;
import yett.command.diagnose.question.PromptRequests;
import yett.command.diagnose.sitting.ChildRings;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.console.Text;
import yett.saying.DangerSayings.Danger;
import yett.wording.Wording;

/**
 * Asks a child about dangers: one plain question at a time, and few of them. What a child is not
 * asked about, a swollen battery for one, counts as not known until a grown-up has looked.
 */
final class ChildDangers {
  private static final Pattern YES = Pattern.compile("(?i)(?:y|yes|yeah|yep|1)(?:[ ,.!].*)?");
  private static final Pattern NO = Pattern.compile("(?i)(?:n|no|nope|0|2)(?:[ ,.!].*)?");

  /**
   * What the child said.
   *
   * @param so the danger that there is; after the first nothing else is asked
   * @param denied dangers that there are not
   * @param words what it said besides
   */
  record Answers(Set<Danger> so, Set<Danger> denied, List<String> words) {}

  private final Sitting sitting;
  private final PromptRequests wishes;
  private final List<Danger> list;

  ChildDangers(Sitting sitting, PromptRequests wishes, List<Danger> list) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.list = list;
  }

  /**
   * @param heard dangers that the child's words may mean; they are asked about first
   * @return empty if something else comes first now, or a grown-up has come
   */
  Optional<Answers> ask(Collection<Danger> heard) {
    sitting.show(
        Block.heading("Before anything else: a child is on the telephone"),
        Block.paragraph(
            "Read out one question at a time, and go on to the next when it is answered. Nobody goes"
                + " to look."));
    List<Danger> open = new ArrayList<>(order(heard));
    Answers answers = new Answers(new LinkedHashSet<>(), new LinkedHashSet<>(), new ArrayList<>());
    while (!open.isEmpty()) {
      Danger danger = open.remove(0);
      sitting.show(Block.paragraph(Text.of("Read out: ").and(Text.strong(question(danger)))));
      switch (reply(line -> hear(line, danger, open, answers))) {
        case YES -> {
          answers.so().add(danger);
          return Optional.of(answers);
        }
        case NO -> answers.denied().add(danger);
        case UNTOLD -> {}
        case ELSEWHERE -> {
          return Optional.empty();
        }
      }
    }
    return Optional.of(answers);
  }

  /** What comes of a question; elsewhere: something else comes first, or a grown-up has come. */
  private enum Reply {
    YES,
    NO,
    UNTOLD,
    ELSEWHERE
  }

  /**
   * @param more takes a line that says more than a word
   */
  private Reply reply(Consumer<String> more) {
    while (true) {
      String line = sitting.line("yes, no, or unknown").strip();
      if (!ChildRings.isOn(sitting)) {
        return Reply.ELSEWHERE;
      }
      Optional<Reply> reply = read(line);
      if (reply.isEmpty() && wishes.grant(line)) {
        return Reply.ELSEWHERE;
      }
      if (reply.isEmpty()) {
        sitting.say("Type yes, no or unknown, as the child says it.");
      }
      if (line.contains(" ")) {
        more.accept(line);
      }
      if (reply.isPresent()) {
        return reply.get();
      }
    }
  }

  private static Optional<Reply> read(String line) {
    if (YES.matcher(line).matches()) {
      return Optional.of(Reply.YES);
    }
    if (NO.matcher(line).matches()) {
      return Optional.of(Reply.NO);
    }
    boolean untold = line.equalsIgnoreCase("d") || CannotTellWords.answer(line).isPresent();
    return untold ? Optional.of(Reply.UNTOLD) : Optional.empty();
  }

  /** Keeps what the child says besides, and asks next about dangers that it may mean. */
  private void hear(String line, Danger asked, List<Danger> open, Answers answers) {
    answers.words().add(line);
    sitting.ears().dangers().hear(line, list).stream()
        .map(this::plainForm)
        .filter(d -> !open.contains(d) && !d.equals(asked) && !answers.denied().contains(d))
        .forEach(d -> open.add(0, d));
  }

  /**
   * Whoever is hurt comes first, then what the child's words may mean, then the few others that a
   * child can tell. Of two forms of one danger the graver is asked about.
   */
  private Collection<Danger> order(Collection<Danger> heard) {
    Set<Danger> all = new LinkedHashSet<>();
    list.stream().filter(this::isPlain).limit(1).forEach(all::add);
    heard.stream().map(this::plainForm).forEach(all::add);
    list.stream().filter(this::isPlain).forEach(all::add);
    return all;
  }

  /** Whether there is a question about it in a child's words. */
  private boolean isPlain(Danger danger) {
    return sitting.base().telephone().child().containsKey(danger.check().id())
        && danger.outcome().equals(danger.check().outcomes().get(1));
  }

  private Danger plainForm(Danger danger) {
    return list.stream()
        .filter(d -> d.check().equals(danger.check()) && isPlain(d))
        .findFirst()
        .orElse(danger);
  }

  private String question(Danger danger) {
    return isPlain(danger)
        ? sitting.base().telephone().child().get(danger.check().id())
        : "Is this so: " + Wording.capital(danger.outcome().text()) + "?";
  }
}
