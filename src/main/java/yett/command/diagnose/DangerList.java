package yett.command.diagnose;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.command.common.Words;
import yett.console.Block;
import yett.interview.Answer;
import yett.interview.Event;
import yett.interview.Step;
import yett.knowledge.Role;
import yett.saying.DangerSayings.Danger;
import yett.wording.Wording;

/**
 * The list of dangers at a prompt. Only 0 and the one word "none" or "nothing" say that there is no
 * danger, and only numbers say which there are. All other words are read for danger and asked back,
 * because "none of the men can free him" begins with "none" too.
 */
public final class DangerList {
  private static final Pattern NUMBERS = Pattern.compile("\\d{1,3}([\\s,;]+\\d{1,3})*[\\s,;]*");

  /** Nobody can say of these. */
  private static final Pattern UNKNOWN =
      Pattern.compile("(?:unknown|cannot tell)\\s+(" + NUMBERS + ")");

  private static final Pattern ALL_UNKNOWN = Pattern.compile("(?:unknown|cannot tell)\\s+all");

  /** Answers to a question that was not asked: they tell nothing that is worth keeping. */
  private static final Set<String> YES_OR_NO = Set.of("no", "yes", "nope", "yeah", "ok", "okay");

  /** As the whole line: "no" alone may be the answer to something else. */
  private static final Set<String> NONE = Set.of("0", "none", "nothing");

  private final Sitting sitting;
  private final PromptRequests wishes;
  private final KnownDangers known;

  public DangerList(Sitting sitting, PromptRequests wishes) {
    this.sitting = sitting;
    this.wishes = wishes;
    this.known = new KnownDangers(sitting);
  }

  /** Asks until the list is answered, or a wish leads elsewhere. */
  public void ask(Step.AskDangers step) {
    List<Danger> dangers = new ArrayList<>();
    step.dangers()
        .forEach(c -> c.outcomes().stream().skip(1).forEach(o -> dangers.add(new Danger(c, o))));
    sitting.show(sitting.views().dangers(step, role()));
    List<String> words = new ArrayList<>();
    List<Danger> heard = known.told(step, dangers);
    if (!heard.isEmpty()) {
      askBack(heard, dangers);
    }
    while (true) {
      String line = told(sitting.line("0 for none, or the numbers that are so"));
      String text = line.strip().toLowerCase(Locale.ROOT);
      if (ALL_UNKNOWN.matcher(text).matches()) {
        record(step, Set.of(), new LinkedHashSet<>(dangers), words);
        return;
      }
      Matcher unknown = UNKNOWN.matcher(text);
      if (unknown.matches()) {
        Optional<Set<Danger>> unsure = numbers(unknown.group(1), dangers);
        if (unsure.isPresent()) {
          record(step, Set.of(), unsure.get(), words);
          return;
        }
      }
      if (wishes.grant(line)) {
        return;
      }
      if (NONE.contains(text)) {
        if (heard.isEmpty() || isDenied(heard)) {
          record(step, Set.of(), Set.of(), words);
          return;
        }
        continue;
      }
      if (text.equals("no") && !heard.isEmpty()) {
        heard = List.of();
        sitting.say("And of the whole list? 0 if none of it is so, or the numbers that are.");
        continue;
      }
      if (text.equals("yes") && !heard.isEmpty()) {
        if (areSeparate(heard)) {
          record(step, new LinkedHashSet<>(heard), Set.of(), words);
          return;
        }
        sitting.say("Two of these are ways of the same danger: type the numbers, the graver one.");
        continue;
      }
      if (NUMBERS.matcher(text).matches()) {
        Optional<Set<Danger>> picked = numbers(text, dangers);
        if (picked.isPresent() && areSeparate(picked.get())) {
          record(step, picked.get(), Set.of(), words);
          return;
        }
        sitting.say(
            "Type numbers from 1 to "
                + dangers.size()
                + ", or 0 alone for none; of two that are ways of the same danger, the graver.");
      } else if (!text.isEmpty()) {
        if (!YES_OR_NO.contains(text)) {
          words.add(line.strip());
        }
        heard = sitting.ears().dangers().hear(line, dangers);
        askBack(heard, dangers);
      } else {
        sitting.say(
            "Type 0 only if none of these is so, or the numbers that are; unknown 2 if you"
                + " cannot tell about the second, unknown all if you see nothing of the gate.");
      }
    }
  }

  /** One slip of a finger is not enough to pass over what somebody said. */
  private boolean isDenied(List<Danger> heard) {
    sitting.show(
        Block.paragraph("What was said may mean:"),
        Block.numbered(heard.stream().map(d -> Wording.capital(d.outcome().text())).toList()));
    String line = sitting.line("Type no if none of it is so; anything else asks again");
    return line.strip().equalsIgnoreCase("no");
  }

  /** Here all words are told; "tell" before them adds nothing. */
  private static String told(String line) {
    String words = Words.Wish.TELL.after(line);
    boolean tell = Words.wish(line).equals(Optional.of(Words.Wish.TELL)) && !words.isEmpty();
    return tell ? words : line;
  }

  private void askBack(List<Danger> heard, List<Danger> dangers) {
    if (heard.isEmpty()) {
      sitting.say(
          "That does not say which of these is so, or that none is; words are kept. Type"
              + " the numbers that are so; 0 only if none is; unknown 2 if you cannot tell about"
              + " the second.");
      return;
    }
    sitting.show(
        Block.paragraph("That may mean danger:"),
        new Block.Numbered(
            heard.stream()
                .map(
                    d ->
                        Block.item(
                            Integer.toString(dangers.indexOf(d) + 1),
                            Wording.capital(d.outcome().text())))
                .toList()),
        Block.paragraph(
            (heard.size() == 1 ? "Is it so? yes" : "Are all of these so? yes")
                + ", or the numbers of all that are so; 0 only if nothing on the whole list is."));
  }

  /** Whether each is the answer to another question; of two that are not, the graver counts. */
  private static boolean areSeparate(Collection<Danger> picked) {
    return picked.stream().map(d -> d.check().id()).distinct().count() == picked.size();
  }

  private static Optional<Set<Danger>> numbers(String text, List<Danger> dangers) {
    Set<Danger> picked = new LinkedHashSet<>();
    for (String word : text.split("[\\s,;]+")) {
      int number = Integer.parseInt(word);
      if (number < 1 || number > dangers.size()) {
        return Optional.empty();
      }
      picked.add(dangers.get(number - 1));
    }
    return Optional.of(picked);
  }

  /**
   * What was said in words is kept with the answers.
   *
   * @param unsure what nobody can say, which is no "no"
   */
  private void record(
      Step.AskDangers step, Set<Danger> so, Set<Danger> unsure, List<String> words) {
    List<Event> events = new ArrayList<>();
    for (String said : words) {
      events.add(role() == Role.CALLER ? new Event.Said(said) : new Event.Noted(said));
    }
    Map<String, Answer> answers = new LinkedHashMap<>();
    step.dangers().forEach(c -> answers.put(c.id(), new Answer.Chosen(c.outcomes().get(0).id())));
    unsure.forEach(d -> answers.put(d.check().id(), new Answer.CannotTell()));
    so.forEach(d -> answers.put(d.check().id(), new Answer.Chosen(d.outcome().id())));
    known
        .kept(step, answers)
        .forEach(d -> answers.put(d.check().id(), new Answer.Chosen(d.outcome().id())));
    answers.forEach((check, answer) -> events.add(new Event.Answered(check, answer)));
    sitting.record(events.toArray(Event[]::new));
  }

  private Role role() {
    return sitting.moment().state().role();
  }
}
