package yett.knowledge;

import java.util.List;

/**
 * What a check or proof is to an inspection.
 *
 * @param at inspections that it belongs to; none for what is only asked in search of a fault
 * @param remarks outcomes out of the ordinary that are put down as a remark; all others fail
 */
public record Inspected(List<InspectionKind> at, List<String> remarks) {
  static final Inspected NEVER = new Inspected(List.of(), List.of());

  public Inspected {
    at = List.copyOf(at);
    remarks = List.copyOf(remarks);
  }
}
