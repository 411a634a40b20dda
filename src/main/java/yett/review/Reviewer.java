package yett.review;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import yett.belief.CausalModel;
import yett.calculation.SharePosterior;
import yett.knowledge.Cause;
import yett.knowledge.Check;
import yett.knowledge.RuleBase;

/** Compares settled cases with the chances on the cards. */
public final class Reviewer {
  /** Fewest cases for a comparison; considered judgement. */
  public static final int FEWEST = 5;

  /** Evidence (decibans) from which the cases contradict a card; screens call it strong. */
  public static final double AGAINST = 10;

  private static final double LEAST_PRIOR = 0.0001;
  private static final double MOST_PRIOR = 0.9;

  private final RuleBase base;
  private final CausalModel model;
  private final double weight;

  /**
   * @param weight number of cases that the judgement on a card counts as
   */
  public Reviewer(RuleBase base, CausalModel model, double weight) {
    this.base = base;
    this.model = model;
    this.weight = weight;
  }

  /** The chances that the cases contradict, the strongest evidence first. */
  public List<Proposal> review(List<SettledCase> cases) {
    return all(cases).stream()
        .filter(p -> p.posterior().cases() >= FEWEST)
        .filter(p -> p.posterior().decibansAgainst() >= AGAINST)
        .sorted(
            Comparator.comparingDouble((Proposal p) -> -p.posterior().decibansAgainst())
                .thenComparing(Proposal::name))
        .toList();
  }

  /** A proposal for every chance that the cases have evidence on, from cards and cases together. */
  List<Proposal> all(List<SettledCase> cases) {
    List<Proposal> all = new ArrayList<>();
    base.causes().values().forEach(c -> prior(c, cases).ifPresent(all::add));
    base.checks().values().stream()
        .filter(c -> c.kind() != Check.Kind.PROOF && !c.danger() && c.repeats().isEmpty())
        .forEach(
            check -> {
              otherwise(check, cases).ifPresent(all::add);
              check.likelihood().keySet().stream()
                  .filter(c -> !c.equals(Cause.NOT_IN_RULE_BASE))
                  .forEach(c -> row(check, c, cases).ifPresent(all::add));
            });
    return all;
  }

  private Optional<Proposal> prior(Cause cause, List<SettledCase> cases) {
    List<SettledCase> possible =
        cases.stream()
            .filter(c -> c.share().containsKey(cause.id()))
            .filter(c -> c.causes().stream().noneMatch(p -> consequences(p, cause.id())))
            .toList();
    if (possible.isEmpty() || cause.id().equals(Cause.NOT_IN_RULE_BASE)) {
      return Optional.empty();
    }
    int hits = (int) possible.stream().filter(c -> c.causes().contains(cause.id())).count();
    double judged =
        possible.stream().mapToDouble(c -> c.share().get(cause.id())).average().orElseThrow();
    judged = Math.min(1 - LEAST_PRIOR, Math.max(LEAST_PRIOR, judged));
    SharePosterior posterior =
        new SharePosterior(
            new double[] {judged, 1 - judged}, weight, new int[] {hits, possible.size() - hits});
    double moved = odds(posterior.mean(0)) / odds(judged) * odds(cause.prior());
    double instead = Math.min(MOST_PRIOR, Math.max(LEAST_PRIOR, moved / (1 + moved)));
    return Optional.of(
        new Proposal(
            Proposal.Kind.PRIOR,
            "",
            cause.id(),
            List.of("there", "not there"),
            new double[] {cause.prior()},
            new double[] {threeFigures(instead)},
            posterior));
  }

  private boolean consequences(String parent, String cause) {
    Cause card = base.causes().get(parent);
    return card != null && card.consequences().containsKey(cause);
  }

  private static double odds(double chance) {
    return chance / (1 - chance);
  }

  private static double threeFigures(double number) {
    return new BigDecimal(number).round(new MathContext(3)).doubleValue();
  }

  private Optional<Proposal> otherwise(Check check, List<SettledCase> cases) {
    double[] judged = inCases(check, new int[0]);
    return posterior(check, judged, cases, Set.of())
        .map(
            p -> {
              double[] so = onCard(check, means(p));
              return proposal(
                  Proposal.Kind.OTHERWISE, check, "", check.otherwise(), Rows.withoutSlip(so), p);
            });
  }

  private Optional<Proposal> row(Check check, String cause, List<SettledCase> cases) {
    double[] judged = inCases(check, new int[] {model.indexOf(cause)});
    double[] none = model.table(check.id()).outcomeChances(new int[0]);
    return posterior(check, judged, cases, Set.of(cause))
        .map(
            p ->
                proposal(
                    Proposal.Kind.ROW,
                    check,
                    cause,
                    check.likelihood().get(cause),
                    Rows.contribution(onCard(check, means(p)), none),
                    p));
  }

  private static Proposal proposal(
      Proposal.Kind kind,
      Check check,
      String cause,
      double[] card,
      double[] instead,
      SharePosterior posterior) {
    double[] figures = Rows.figures(instead);
    boolean complaint = check.kind() == Check.Kind.COMPLAINT;
    int said = complaint ? check.indexOf(Check.SAID) : 0;
    return new Proposal(
        kind,
        check.id(),
        cause,
        check.outcomes().stream().map(Check.Outcome::id).toList(),
        complaint ? new double[] {card[said]} : card.clone(),
        complaint ? new double[] {figures[said]} : figures,
        posterior);
  }

  /**
   * The posterior from the cases in which, of all causes with a row on a check, exactly these were
   * present.
   */
  private Optional<SharePosterior> posterior(
      Check check, double[] judged, List<SettledCase> cases, Set<String> causes) {
    int[] counts = new int[judged.length];
    ToIntFunction<SettledCase> outcome = c -> c.seen().getOrDefault(check.id(), -1);
    cases.stream()
        .filter(c -> speaking(check, c).equals(causes))
        .mapToInt(outcome)
        .filter(i -> i >= 0)
        .forEach(i -> counts[i]++);
    SharePosterior posterior = new SharePosterior(judged, weight, counts);
    return posterior.cases() == 0 ? Optional.empty() : Optional.of(posterior);
  }

  private static Set<String> speaking(Check check, SettledCase settled) {
    return settled.causes().stream()
        .filter(check.likelihood()::containsKey)
        .collect(Collectors.toSet());
  }

  /** Chances as they show in cases: a complaint may be present and go unmentioned. */
  private double[] inCases(Check check, int[] causes) {
    double[] so = model.table(check.id()).outcomeChances(causes);
    if (check.kind() != Check.Kind.COMPLAINT) {
      return so;
    }
    int said = check.indexOf(Check.SAID);
    double mentioned = so[said] * (1 - check.unmentioned());
    return said == 0
        ? new double[] {mentioned, 1 - mentioned}
        : new double[] {1 - mentioned, mentioned};
  }

  /** The inverse of {@link #inCases}: chances on the card from those that show in cases. */
  private static double[] onCard(Check check, double[] shown) {
    if (check.kind() != Check.Kind.COMPLAINT) {
      return shown;
    }
    int said = check.indexOf(Check.SAID);
    double so = Math.min(0.999, shown[said] / (1 - Math.min(0.99, check.unmentioned())));
    return said == 0 ? new double[] {so, 1 - so} : new double[] {1 - so, so};
  }

  private static double[] means(SharePosterior posterior) {
    double[] means = new double[posterior.counts().length];
    for (int i = 0; i < means.length; i++) {
      means[i] = posterior.mean(i);
    }
    return means;
  }
}
