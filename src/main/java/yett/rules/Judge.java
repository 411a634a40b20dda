package yett.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.kie.api.runtime.ClassObjectFilter;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.ObjectFilter;
import org.kie.api.runtime.rule.FactHandle;
import yett.knowledge.RuleBase;

/**
 * Applies the rules of a rule base to one case. The judgement depends on the facts alone. From one
 * call to the next only changed facts are inserted or retracted; truth maintenance updates the
 * conclusions.
 */
public final class Judge implements AutoCloseable {
  /** Number of firings after which a rule set counts as looping. */
  private static final int MOST_FIRINGS = 100_000;

  private static final ObjectFilter CONCLUSIONS = new ClassObjectFilter(Conclusion.class);

  private final KieSession session;
  private final RuleBase base;

  /** Names of the rules that add-ons switch off. */
  private final Set<String> off;

  private final Map<Fact, FactHandle> told = new HashMap<>();

  /** The last judgement; most of its conclusions stay, already sorted. */
  private Judgement last = Judgement.of(List.of());

  Judge(KieSession session, RuleBase base, List<Row> rows) {
    this.session = session;
    this.base = base;
    this.off =
        base.addOns().stream()
            .flatMap(a -> a.switchesOff().stream())
            .filter(card -> card.startsWith("rule "))
            .map(card -> card.substring("rule ".length()))
            .collect(Collectors.toSet());
    Origins.tell(base, session);
    base.causes().values().forEach(session::insert);
    base.checks().values().forEach(session::insert);
    base.histories().values().forEach(session::insert);
    base.repairs().values().forEach(session::insert);
    base.setUps().values().forEach(session::insert);
    base.stops().values().forEach(session::insert);
    base.siteQuestions().values().forEach(session::insert);
    rows.forEach(session::insert);
  }

  /**
   * The judgement on exactly these facts.
   *
   * @throws IllegalStateException if the rules loop
   */
  public Judgement judge(Set<Fact> facts) {
    for (Fact gone : new ArrayList<>(told.keySet())) {
      if (!facts.contains(gone)) {
        session.delete(told.remove(gone));
      }
    }
    for (Fact fact : facts) {
      if (!told.containsKey(fact)) {
        told.put(fact, session.insert(fact));
      }
    }
    if (session.fireAllRules(m -> !off.contains(m.getRule().getName()), MOST_FIRINGS)
        >= MOST_FIRINGS) {
      throw new IllegalStateException(
          "the rules never finish: look for a rule that brings back its own conditions");
    }
    Set<Conclusion> now = Collections.newSetFromMap(new IdentityHashMap<>());
    for (Object object : session.getObjects(CONCLUSIONS)) {
      if (known((Conclusion) object)) {
        now.add((Conclusion) object);
      }
    }
    List<Conclusion> conclusions = new ArrayList<>();
    for (Conclusion stays : last.conclusions()) {
      if (now.remove(stays)) {
        conclusions.add(stays);
      }
    }
    conclusions.addAll(now);
    last = Judgement.of(conclusions);
    return last;
  }

  /**
   * Whether a conclusion is about an existing card; a rule may still refer to one that an add-on
   * has switched off.
   */
  private boolean known(Conclusion conclusion) {
    if (conclusion instanceof Conclusion.Odds odds) {
      return base.causes().containsKey(odds.cause());
    }
    if (conclusion instanceof Conclusion.FollowUp next) {
      return base.repairs().containsKey(next.card()) || base.checks().containsKey(next.card());
    }
    return true;
  }

  @Override
  public void close() {
    session.dispose();
  }
}
