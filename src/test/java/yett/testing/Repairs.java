package yett.testing;

import java.util.List;
import java.util.Map;
import yett.knowledge.Repair;
import yett.knowledge.Role;

/** Makes repairs for tests that need only a few of their properties. */
public final class Repairs {
  private Repairs() {}

  /** A technician's repair of ten minutes, without set-ups, proofs or conditions. */
  public static Repair of(String id, Map<String, Double> removes, List<Repair.Part> parts) {
    return new Repair(
        id,
        id,
        List.of(),
        removes,
        10,
        parts,
        List.of(),
        Role.TECHNICIAN,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Map.of(),
        "test");
  }

  /** The same repair with another id, other entailed repairs and other conditions on the gate. */
  public static Repair like(
      Repair repair, String id, List<String> entails, Map<String, List<String>> onlyIf) {
    return copy(repair, id, repair.measureFirst(), entails, List.of(), onlyIf);
  }

  /** The same repair, with other checks to make before it. */
  public static Repair measuredBy(Repair repair, List<String> measureFirst) {
    return copy(
        repair, repair.id(), measureFirst, repair.entails(), repair.putsRight(), repair.onlyIf());
  }

  private static Repair copy(
      Repair repair,
      String id,
      List<String> measureFirst,
      List<String> entails,
      List<String> putsRight,
      Map<String, List<String>> onlyIf) {
    return new Repair(
        id,
        repair.name(),
        repair.steps(),
        repair.removes(),
        repair.minutes(),
        repair.parts(),
        repair.needs(),
        repair.who(),
        repair.hazards(),
        measureFirst,
        entails,
        repair.proofs(),
        putsRight,
        onlyIf,
        repair.source());
  }
}
