package yett.bench;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.paper.Markup;
import yett.paper.Page;
import yett.replay.RecordedCase;
import yett.wording.Figures;
import yett.wording.WhoMay;
import yett.wording.Wording;

/**
 * Writes everything that is known of one cause as a page to print, for people who teach or approve
 * it.
 */
public final class CausePage {
  private static final int MOST_REPAIRS = 2;

  private final RuleBase base;
  private final Cause cause;
  private final List<RecordedCase> cases;
  private final Markup page;
  private final WorkOnPage work;

  private CausePage(RuleBase base, Cause cause, List<RecordedCase> cases, Markup page) {
    this.base = base;
    this.cause = cause;
    this.cases = cases;
    this.page = page;
    this.work = new WorkOnPage(base, page);
  }

  /**
   * @param id of a cause of the rule base
   * @param cases of the rule base; those in which the cause is true are named
   * @param paper the word for the paper size
   */
  public static String of(String id, RuleBase base, List<RecordedCase> cases, String paper) {
    Cause cause = base.causes().get(id);
    return Page.of(
        cause.name(),
        "What the rule base knows of one cause",
        paper,
        page -> new CausePage(base, cause, cases, page).write());
  }

  private void write() {
    page.leaf("h1", cause.name());
    new CauseOnPage(base, cause, page).write();
    List<LookAlike> alike = LookAlike.of(cause, base);
    alike(alike);
    Optional<DecisiveCheck> decisive = DecisiveCheck.of(cause, alike, base);
    List<Repair> repairs = base.removing(cause.id());
    dangers(decisive, repairs);
    decisive.ifPresent(this::decisive);
    repairs(repairs);
    proofs(repairs);
    cases();
    sources();
    page.leaf(
        "p",
        "To learn from and to agree on. At a gate, follow the program: what was seen"
            + " there may forbid what this page says.",
        "class",
        "note");
  }

  private void alike(List<LookAlike> alike) {
    page.leaf("h2", "What it is mistaken for");
    if (alike.isEmpty()) {
      page.leaf("p", "Nothing: no other cause shows a quarter of the same.");
      return;
    }
    row("th", "Cause", "The same", "Told apart best by");
    for (LookAlike one : alike) {
      row("td", one.cause().name(), Figures.percent(one.share()), apart(one));
    }
    page.close().close();
  }

  private String apart(LookAlike one) {
    return one.told()
        .map(
            best ->
                best.check().ask()
                    + " With this cause mostly: "
                    + mostly(best.check(), cause)
                    + "; with the other: "
                    + mostly(best.check(), one.cause())
                    + ".")
        .orElse("No check tells them apart.");
  }

  private static String mostly(Check check, Cause cause) {
    double[] row = check.likelihood().getOrDefault(cause.id(), check.otherwise());
    int most = 0;
    for (int o = 1; o < row.length; o++) {
      most = row[o] > row[most] ? o : most;
    }
    return Wording.meaning(check, check.outcomes().get(most).id())
        + " ("
        + CauseOnPage.hundred(row[most])
        + ")";
  }

  /** Writes a row of a table, which the first row begins; the caller closes body and table. */
  private void row(String element, String... words) {
    if (element.equals("th")) {
      page.open("table").open("thead");
    }
    page.open("tr");
    for (String word : words) {
      page.leaf(element, word);
    }
    page.close();
    if (element.equals("th")) {
      page.close().open("tbody");
    }
  }

  private void decisive(DecisiveCheck decisive) {
    Check check = decisive.check();
    page.leaf("h2", "The check that decides");
    page.leaf("h3", check.ask());
    work.conditions(
        check.needs(),
        check.hazards(),
        Figures.minutes(check.minutes())
            + ", "
            + WhoMay.words(base, check.id(), check.who(), check.hazards()));
    if (!check.how().isBlank()) {
      page.leaf("p", check.how());
    }
    page.leaf(
        "p",
        "It speaks for this cause: "
            + Wording.meaning(check, decisive.shows().id())
            + ". Against the cause it is hardest to tell from, it is right at "
            + Figures.percent(decisive.least())
            + " of all such gates.");
  }

  /** Writes, before any step, all hazards of the work below. */
  private void dangers(Optional<DecisiveCheck> decisive, List<Repair> repairs) {
    List<Set<String>> hazards = new ArrayList<>();
    decisive
        .map(DecisiveCheck::check)
        .ifPresent(c -> hazards.add(work.hazards(c.needs(), c.hazards())));
    inFull(repairs).forEach(r -> hazards.add(work.hazards(r.needs(), r.hazards())));
    if (hazards.stream().anyMatch(h -> !h.isEmpty())) {
      page.leaf("h2", "What can hurt at the work below");
      work.cautions(hazards);
    }
  }

  private static List<Repair> inFull(List<Repair> repairs) {
    return repairs.subList(0, Math.min(MOST_REPAIRS, repairs.size()));
  }

  private void repairs(List<Repair> repairs) {
    page.leaf("h2", "What puts it right");
    inFull(repairs).forEach(r -> work.repair(r, removes(r)));
    if (repairs.size() > MOST_REPAIRS) {
      page.leaf(
          "p",
          "Less often: "
              + repairs.subList(MOST_REPAIRS, repairs.size()).stream()
                  .map(r -> r.name() + " (" + Figures.percent(removes(r)) + ")")
                  .collect(Collectors.joining("; "))
              + ".");
    }
  }

  private double removes(Repair repair) {
    return repair.removes().get(cause.id());
  }

  private void proofs(List<Repair> repairs) {
    Set<String> ids = new LinkedHashSet<>();
    repairs.forEach(r -> ids.addAll(r.proofs()));
    base.proofs().stream()
        .filter(p -> p.likelihood().containsKey(cause.id()))
        .forEach(p -> ids.add(p.id()));
    page.leaf("h2", "What must pass before the gate returns to service").open("ul");
    ids.forEach(id -> page.leaf("li", base.checks().get(id).ask()));
    page.leaf("li", "and every other proof that the gate as installed needs");
    page.close();
  }

  private void cases() {
    List<RecordedCase> own =
        cases.stream()
            .filter(c -> c.truth().filter(t -> t.contains(cause.id())).isPresent())
            .toList();
    page.leaf("h2", "Cases");
    if (own.isEmpty()) {
      page.leaf("p", "No case of the rule base has it yet.");
      return;
    }
    page.open("ul");
    for (RecordedCase one : own) {
      page.open("li").leaf("strong", one.name());
      page.text(one.story().isBlank() ? " (" + one.file() + ")" : ": " + one.story()).close();
    }
    page.close();
  }

  private void sources() {
    Set<String> sources = new LinkedHashSet<>();
    sources.add(cause.source());
    base.effectRows().chances(cause).keySet().forEach(e -> sources.add(e.source()));
    Sign.of(cause, base).forEach(s -> sources.add(s.check().source()));
    List<String> told = new ArrayList<>(sources);
    told.removeIf(String::isBlank);
    page.leaf("h2", "Where the figures are from").open("ul");
    told.forEach(s -> page.leaf("li", s));
    page.close();
    page.leaf("p", "Rule base " + base.fingerprint() + ".", "class", "note");
  }
}
