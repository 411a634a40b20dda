package yett.casebook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.UUID;

/** Exports and imports cases and sites; the caller holds the transaction. */
record CarryTables(CaseTables cases, SiteTables sites, PeopleTables people, Renaming renaming) {
  CarriedCase carry(CaseId id, boolean withPeople) {
    var line = cases.summary(id);
    String uid = cases.uid(id, UUID.randomUUID().toString());
    return new CarriedCase(
        uid,
        id,
        line.siteId(),
        line.opened(),
        line.summary(),
        cases.eventsAfter(id, 0).stream()
            .map(e -> new NewEvent(e.at(), e.by(), e.type(), e.body()))
            .toList(),
        withPeople ? people.of(id) : List.of());
  }

  ImportedCase take(CarriedCase carried) {
    var known = cases.named(carried.uid());
    if (known.isEmpty()) {
      String site = renaming.now(carried.siteId());
      CaseId id = cases.beginAs(carried.uid(), carried.id(), site, carried.opened());
      return added(carried, id, 0, ImportedCase.Outcome.NEW);
    }
    CaseId id = known.get();
    List<StoredEvent> here = cases.eventsAfter(id, 0);
    int common = 0;
    while (common < here.size()
        && common < carried.events().size()
        && here.get(common).is(carried.events().get(common))) {
      common++;
    }
    if (common == carried.events().size()) {
      return new ImportedCase(id, ImportedCase.Outcome.KNOWN, List.of(), List.of());
    }
    if (common == here.size()) {
      return added(carried, id, common, ImportedCase.Outcome.CONTINUED);
    }
    List<StoredEvent> there = new ArrayList<>();
    for (int i = common; i < carried.events().size(); i++) {
      there.add(carried.events().get(i).numbered(i + 1L));
    }
    return new ImportedCase(
        id, ImportedCase.Outcome.CONFLICT, here.subList(common, here.size()), List.copyOf(there));
  }

  private ImportedCase added(
      CarriedCase carried, CaseId id, int known, ImportedCase.Outcome outcome) {
    var events = carried.events().subList(known, carried.events().size());
    var stored = cases.append(id, known, events);
    cases.summarise(id, carried.events().size(), carried.summary());
    var parts = people.of(id).stream().map(Person::part).toList();
    carried.people().stream()
        .filter(p -> !parts.contains(p.part()))
        .forEach(p -> people.save(id, p));
    return new ImportedCase(id, outcome, List.of(), stored);
  }

  CarriedSite carry(String siteId) {
    var oldestFirst = new ArrayList<>(sites.history(siteId));
    Collections.reverse(oldestFirst);
    return new CarriedSite(siteId, oldestFirst);
  }

  /**
   * Adds the revisions that are missing here, if all of them are later than those that are here.
   *
   * @return false if the site was described or renamed differently here and elsewhere
   */
  boolean take(CarriedSite carried) {
    if (renaming.isOlderHere(carried)) {
      return true;
    }
    renaming.follow(carried);
    if (renaming.isRenamedApart(carried)) {
      return false;
    }
    boolean taken = takeRevisions(carried);
    renaming.followCases(carried);
    return taken;
  }

  private boolean takeRevisions(CarriedSite carried) {
    List<SiteRecord> here = sites.history(carried.id());
    var unknown = carried.revisions().stream().filter(r -> !here.contains(r)).toList();
    if (unknown.isEmpty()) {
      return true;
    }
    SiteRecord newest = carried.newest();
    if (!here.isEmpty() && same(here.get(0), newest)) {
      return true;
    }
    if (!here.isEmpty() && !carried.revisions().contains(here.get(0))) {
      return false;
    }
    unknown.forEach(sites::save);
    return true;
  }

  private static boolean same(SiteRecord one, SiteRecord other) {
    return one.name().equals(other.name()) && one.body().equals(other.body());
  }
}
