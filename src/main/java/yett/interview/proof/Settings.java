package yett.interview.proof;

import java.util.List;
import java.util.Objects;
import yett.knowledge.Repair;
import yett.knowledge.RuleBase;
import yett.knowledge.SetUp;
import yett.rules.Judgement;

/**
 * The settings of the running gate (limits, force) that a repair made necessary and that nobody has
 * done yet. Until then the leaf might not stop or reverse where it should.
 */
public final class Settings {
  private Settings() {}

  public static List<Repair> due(Judgement judgement, RuleBase base) {
    return judgement.followUps().stream()
        .map(due -> base.repairs().get(due.card()))
        .filter(Objects::nonNull)
        .filter(r -> r.needs().contains(SetUp.GATE_RUNNING))
        .distinct()
        .toList();
  }
}
