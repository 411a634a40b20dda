package yett.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import yett.casebook.CarriedCase;
import yett.casebook.CaseId;
import yett.casebook.CaseStatus;
import yett.casebook.CaseSummary;
import yett.casebook.Casebook;
import yett.casebook.ImportedCase;

/**
 * Calls that begin while the server of the shared casebook is away. They are kept in a casebook on
 * this computer and carried to the server once it answers. A case keeps its unique name on the way,
 * so that a case carried twice arrives once. Only one program at a time works with these calls or
 * delivers them. Delivered calls are deleted here, because they contain what people said.
 */
final class CallsAway {
  private final Path folder;

  /**
   * @param data the directory for data that must not be lost
   * @param shared {@link Casebook#name()} of the casebook that is away
   */
  CallsAway(Path data, String shared) {
    String name = UUID.nameUUIDFromBytes(shared.getBytes(StandardCharsets.UTF_8)).toString();
    this.folder = data.resolve("away").resolve(name);
  }

  /** Whether calls wait here. */
  boolean isAny() {
    return Files.exists(folder.resolve(HeldCalls.FILE));
  }

  /** Opens this computer's casebook and locks it for this program until it is closed. */
  HeldCalls open() {
    HeldCalls held =
        HeldCalls.in(folder)
            .orElseThrow(
                () ->
                    new UncheckedIOException(
                        "Another Yett on this computer is leading a call without the server, or is"
                            + " delivering one. End that first.",
                        new IOException(folder + " is held")));
    try {
      return held.opened();
    } catch (RuntimeException e) {
      held.close();
      throw e;
    }
  }

  /**
   * Carries all calls to the server and deletes them here; carries none while another program works
   * with them.
   *
   * @param told receives a line for each call that arrived
   */
  void deliver(Casebook server, Consumer<String> told) {
    if (!isAny()) {
      return;
    }
    var free = HeldCalls.in(folder);
    if (free.isEmpty()) {
      return;
    }
    try (HeldCalls held = free.get()) {
      held.opened();
      if (isAll(held.casebook(), server, told)) {
        held.delete();
      }
    }
  }

  private static boolean isAll(Casebook here, Casebook server, Consumer<String> told) {
    List<CaseSummary> waiting = new ArrayList<>(here.cases());
    waiting.sort(Comparator.comparing(CaseSummary::id));
    for (CaseSummary call : waiting) {
      here.carry(call.siteId()).ifPresent(server::take);
      CarriedCase carried = here.carry(call.id(), true);
      ImportedCase taken = server.take(carried);
      boolean apart = taken.outcome() == ImportedCase.Outcome.CONFLICT;
      if (apart) {
        taken = server.takeApart(carried);
      }
      told.accept(
          "The call "
              + call.id()
              + " of this computer ("
              + call.siteId()
              + "), begun while the server was away, is delivered: case "
              + taken.id()
              + (apart ? ", beside the one that went on there meanwhile." : ".")
              + " Whoever goes opens it with: resume "
              + taken.id()
              + " --as technician."
              + othersOpen(server, taken.id()));
    }
    return here.unreadable().isEmpty();
  }

  /** Open cases at the same gate, which nobody could see during the call. */
  private static String othersOpen(Casebook server, CaseId arrived) {
    String others =
        server.casesAt(server.summary(arrived).siteId()).stream()
            .filter(c -> !c.id().equals(arrived))
            .filter(c -> c.summary().state() == CaseStatus.OPEN)
            .map(c -> c.id().toString())
            .collect(Collectors.joining(", "));
    return others.isEmpty()
        ? ""
        : " Also open at this gate: "
            + others
            + ". See that nobody is sent twice: calls shows who goes.";
  }
}
