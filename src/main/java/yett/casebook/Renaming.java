package yett.casebook;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;

/**
 * Renames gates, here or because they were renamed in another casebook; the caller holds the
 * transaction. A revision of a site has the name that the gate had then, so the revisions hold the
 * history of its names and carry it to other casebooks.
 */
record Renaming(SiteTables sites) {
  /** The description of a gate that nobody has described. */
  private static final String NOTHING = "{}";

  /** Gives a gate another name, and moves its cases and everything known of it. */
  SiteRecord rename(String from, String to, Instant at) {
    if (!isKnown(from)) {
      throw new CasebookException("There is no gate " + Shown.quoted(from) + ".");
    }
    if (isKnown(to)) {
      throw new CasebookException(
          "There is a gate "
              + Shown.quoted(to)
              + " already. Choose another name, or, if both are the same gate, make one of them:"
              + " gates merge.");
    }
    if (!sites.exists(from)) {
      sites.save(new SiteRecord(from, from, NOTHING, at));
    }
    String body = sites.history(from).get(0).body();
    sites.move(from, to);
    return sites.save(new SiteRecord(to, to, body, at));
  }

  /**
   * Merges two entries for the same gate. The cases of the first and what was said of it move to
   * the second, whose description stays the newest.
   */
  SiteRecord merge(String from, String into, Instant at) {
    for (String name : List.of(from, into)) {
      if (!isKnown(name)) {
        throw new CasebookException("There is no gate " + Shown.quoted(name) + ".");
      }
    }
    for (String name : List.of(from, into)) {
      if (!sites.exists(name)) {
        sites.save(new SiteRecord(name, name, NOTHING, at));
      }
    }
    SiteRecord other = sites.history(from).get(0);
    SiteRecord stays = sites.history(into).get(0);
    sites.join(from, into);
    String body = stays.body().equals(NOTHING) ? other.body() : stays.body();
    return sites.save(new SiteRecord(into, into, body, at));
  }

  private boolean isKnown(String name) {
    return sites.exists(name) || sites.hasCases(name);
  }

  /**
   * The present name of a gate that somebody calls by this name, perhaps without knowing of a new
   * one.
   */
  String now(String name) {
    if (sites.exists(name)) {
      return name;
    }
    List<String> here = sites.formerly(name);
    return here.size() == 1 ? here.get(0) : name;
  }

  /** Whether this gate was renamed here after the file was written. */
  boolean isOlderHere(CarriedSite carried) {
    SiteRecord newest = carried.newest();
    return !sites.exists(carried.id()) && here(newest.name()).anyMatch(id -> holds(id, newest));
  }

  /** Whether it was renamed both here and elsewhere. */
  boolean isRenamedApart(CarriedSite carried) {
    return !sites.exists(carried.id())
        && carried.revisions().stream().anyMatch(r -> here(r.name()).anyMatch(id -> holds(id, r)));
  }

  /** Adopts a name that the gate has got elsewhere since. */
  void follow(CarriedSite carried) {
    String to = carried.id();
    if (!sites.exists(to)) {
      carried.revisions().stream()
          .filter(r -> !r.name().equals(to) && sites.exists(r.name()))
          .filter(r -> isSame(sites.history(r.name()).get(0), r))
          .findFirst()
          .ifPresent(r -> sites.move(r.name(), to));
    }
  }

  /**
   * Moves the cases that this casebook has under a gate's earlier names. There may be some even if
   * the gate was not described here when it was renamed elsewhere.
   */
  void followCases(CarriedSite carried) {
    List<SiteRecord> revisions = carried.revisions();
    for (int i = 0; i + 1 < revisions.size(); i++) {
      String name = revisions.get(i).name();
      if (!name.equals(carried.id())
          && !name.equals(revisions.get(i + 1).name())
          && !sites.exists(name)) {
        sites.moveCases(name, carried.id(), revisions.get(i + 1).at());
      }
    }
  }

  private Stream<String> here(String name) {
    return Stream.concat(Stream.of(name).filter(sites::exists), sites.formerly(name).stream());
  }

  private boolean holds(String id, SiteRecord revision) {
    return sites.history(id).stream().anyMatch(r -> isSame(r, revision));
  }

  /** Whether the descriptions are equal, apart from the gate's name. */
  private static boolean isSame(SiteRecord one, SiteRecord other) {
    return one.name().equals(other.name())
        && one.body().equals(other.body())
        && one.at().equals(other.at());
  }
}
