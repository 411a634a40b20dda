package yett.command.diagnose.told;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import yett.command.common.ListChoice;
import yett.command.common.NoneWords;
import yett.command.common.Prompt;
import yett.command.common.Words;
import yett.command.diagnose.sitting.LongList;
import yett.command.diagnose.sitting.Sitting;
import yett.console.Block;
import yett.interview.event.Event;
import yett.interview.site.Site;
import yett.interview.site.SiteFacts;
import yett.knowledge.Check;
import yett.knowledge.History;
import yett.knowledge.Role;
import yett.knowledge.SiteCard;

/** Adds a complaint or a recent event that was told without being asked to those told before. */
record ReportedLater(Sitting sitting) {
  void complaints(List<String> ids) {
    List<Check> all =
        sitting.base().complaints().stream()
            .filter(c -> !sitting.moment().judgement().unavailable().contains(c.id()))
            .toList();
    told(
        sitting.moment().state().told().complaints(),
        ids,
        all,
        Check::ask,
        isCall() ? Check::spoken : Check::ask,
        "What else is wrong?",
        Event.Complained::new);
  }

  /** Then the list is read out. */
  private boolean isCall() {
    return sitting.moment().state().role() == Role.CALLER;
  }

  void history(String id) {
    told(
        sitting.moment().state().told().histories(),
        List.of(id),
        List.copyOf(sitting.base().histories().values()),
        History::name,
        isCall() ? History::spoken : History::name,
        "What else happened lately?",
        Event.Happened::new);
  }

  /**
   * Adds to those told before. If there are none yet, also asks for all others, because the list
   * counts as complete afterwards.
   */
  private <C extends SiteCard> void told(
      Optional<List<String>> before,
      List<String> more,
      List<C> all,
      Function<C, String> name,
      Function<C, String> read,
      String ask,
      Function<List<String>, Event> event) {
    Set<String> ids = new LinkedHashSet<>(before.orElse(List.of()));
    if (!ids.addAll(more)) {
      sitting.say("That is known already.");
      return;
    }
    if (before.isEmpty()) {
      Site site = new SiteFacts(sitting.base()).site(sitting.moment().state().told().site());
      List<C> others = all.stream().filter(c -> !more.contains(c.id()) && site.allows(c)).toList();
      ids.addAll(others(others, read, ask));
    }
    Set<String> known = Set.copyOf(before.orElse(List.of()));
    sitting.record(event.apply(List.copyOf(ids)));
    sitting.say(
        all.stream()
            .filter(c -> ids.contains(c.id()) && !known.contains(c.id()))
            .map(name)
            .collect(Collectors.joining("; ", "Added: ", ".")));
  }

  private <C extends SiteCard> List<String> others(
      List<C> cards, Function<C, String> name, String ask) {
    List<String> texts = cards.stream().map(name).toList();
    List<String> ids = cards.stream().map(SiteCard::id).toList();
    LongList list = new LongList(sitting, List.of(Block.heading(ask)), texts);
    list.show();
    return sitting.until(
        () -> list.prompt("Numbers") + ", or Enter for nothing else",
        line -> {
          if (list.turns(line)) {
            return Prompt.Reading.again("");
          }
          boolean none = NoneWords.isSaid(line) || Words.isBack(line);
          ListChoice.Several picked = ListChoice.several(none ? "" : line, ids, texts);
          return picked.unclear().isPresent()
              ? Prompt.Reading.again(
                  "Type numbers from 1 to " + ids.size() + ", or just press Enter.")
              : Prompt.Reading.of(picked.positions().stream().map(ids::get).toList());
        });
  }
}
