package yett.replay;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yett.interview.Answer;
import yett.interview.Event;
import yett.knowledge.Role;

/**
 * A case that can be run without a person. Every name in it is known to the rule base that it was
 * read against.
 *
 * @param file where it was read from
 * @param site site question to a choice's id or a reading as typed; what is not here is the usual
 * @param answers check or proof to what is answered
 * @param othersUsual whether checks that are not among the answers show what they do on a sound
 *     gate; otherwise they cannot be told
 * @param retests whether the gate runs when it is tried after a repair
 * @param truth the causes that are really there, if the file says so
 * @param roots of these causes those that no other of them brought about; all where the file does
 *     not tell
 * @param repairs right repairs, to judge by
 * @param expect the cause that should come first
 * @param stop the stop that should end it
 * @param misleads whether what is reported points away from the cause
 * @param keptAside whether nobody may tune the cards by this case, so that it can judge them
 * @param blind whether it was written without sight of the rule base (docs/field-set.md)
 */
public record RecordedCase(
    String file,
    String name,
    String story,
    Role person,
    Map<String, String> site,
    List<String> complaints,
    List<String> history,
    Map<String, RepeatedAnswer<Answer>> answers,
    boolean othersUsual,
    Optional<RepeatedAnswer<Event.Retested>> retests,
    Optional<List<String>> truth,
    List<String> roots,
    Optional<List<String>> repairs,
    Optional<String> expect,
    Optional<String> stop,
    boolean misleads,
    boolean keptAside,
    boolean blind,
    Call call) {

  /** A case that no file tells: what it shows is left to whoever answers for it. */
  public static RecordedCase madeUp(
      String name,
      Role person,
      Map<String, String> site,
      List<String> complaints,
      List<String> history,
      List<String> truth) {
    return new RecordedCase(
        name,
        name,
        "",
        person,
        Map.copyOf(site),
        complaints,
        history,
        Map.of(),
        false,
        Optional.empty(),
        Optional.of(truth),
        truth,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        false,
        false,
        new Call(Optional.empty(), List.of(), List.of(), Optional.empty(), Optional.empty()));
  }

  /** The same gate, otherwise answered. */
  RecordedCase withAnswers(Map<String, RepeatedAnswer<Answer>> others) {
    return with(site, others);
  }

  private RecordedCase with(
      Map<String, String> otherSite, Map<String, RepeatedAnswer<Answer>> others) {
    return new RecordedCase(
        file,
        name,
        story,
        person,
        otherSite,
        complaints,
        history,
        others,
        othersUsual,
        retests,
        truth,
        roots,
        repairs,
        expect,
        stop,
        misleads,
        keptAside,
        blind,
        call);
  }

  /** All that the file says of it, the same however its maps are ordered. */
  public String content() {
    return String.join(
        "\n",
        with(Map.of(), Map.of()).toString(),
        new TreeMap<>(site).toString(),
        new TreeMap<>(answers).toString());
  }

  /**
   * What only a call has.
   *
   * @param said the caller's own words
   * @param told checks that whoever reported it answers before anything is asked
   * @param pressing what makes it urgent
   * @param ends how it should end, as results tell it
   * @param parts what the technician will really need, if somebody is sent
   */
  public record Call(
      Optional<String> said,
      List<String> told,
      List<String> pressing,
      Optional<String> ends,
      Optional<List<String>> parts) {}
}
