package yett.knowledge;

import java.util.List;

/**
 * The part of a check or proof in inspections.
 *
 * @param at inspections that it belongs to; empty for a check used only in the search for a fault
 * @param remarks outcomes out of the ordinary that count as a remark; all others fail
 */
public record Inspected(List<InspectionKind> at, List<String> remarks) {
  static final Inspected NEVER = new Inspected(List.of(), List.of());

  public Inspected {
    at = List.copyOf(at);
    remarks = List.copyOf(remarks);
  }
}
