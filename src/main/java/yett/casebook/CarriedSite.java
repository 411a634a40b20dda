package yett.casebook;

import java.util.List;

/**
 * A site being carried from one casebook to another.
 *
 * @param revisions at least one, oldest first, all of one id
 */
public record CarriedSite(String id, List<SiteRecord> revisions) {
  public CarriedSite {
    if (revisions.isEmpty() || revisions.stream().anyMatch(r -> !r.id().equals(id))) {
      throw new IllegalArgumentException("a site needs revisions, all under its own id");
    }
    revisions = List.copyOf(revisions);
  }

  SiteRecord newest() {
    return revisions.get(revisions.size() - 1);
  }
}
