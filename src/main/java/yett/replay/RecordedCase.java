package yett.replay;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import yett.interview.event.Answer;
import yett.interview.event.Event;
import yett.knowledge.Role;

/**
 * A case that can be run without a person. Every id in it is known to the rule base that it was
 * read against.
 *
 * @param file where it was read from
 * @param site site question to a choice's id or a reading as typed; usual answers are left out
 * @param answers check or proof to its answers
 * @param othersUsual whether checks without an answer show what a sound gate shows; otherwise they
 *     cannot be told
 * @param retests results of the retests after repairs
 * @param truth the true causes, if the file gives them
 * @param roots those true causes that no other of them brought about; all if the file does not say
 * @param repairs the right repairs, for judging the run
 * @param expect the cause that should come first
 * @param stop the stop that should end it
 * @param misleads whether the complaints point away from the cause
 * @param keptAside whether nobody may tune the cards to this case, so that it can judge them
 * @param blind whether its author had not seen the rule base (docs/field-set.md)
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

  /** A case without a file; a {@link Respondent} answers its checks. */
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

  /** The same case under another name of its file. */
  public RecordedCase inFile(String other) {
    return with(other, site, answers);
  }

  /** The same gate with other answers. */
  RecordedCase withAnswers(Map<String, RepeatedAnswer<Answer>> others) {
    return with(file, site, others);
  }

  private RecordedCase with(
      String otherFile, Map<String, String> otherSite, Map<String, RepeatedAnswer<Answer>> others) {
    return new RecordedCase(
        otherFile,
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

  /** All contents of the case as text, independent of the order of its maps. */
  public String content() {
    return String.join(
        "\n",
        with(file, Map.of(), Map.of()).toString(),
        new TreeMap<>(site).toString(),
        new TreeMap<>(answers).toString());
  }

  /**
   * The parts that only a call has.
   *
   * @param said the caller's own words
   * @param told checks that the caller answers before anything is asked
   * @param pressing what makes it urgent
   * @param ends how it should end, as results say it
   * @param parts the parts that the technician will really need, if somebody is sent
   */
  public record Call(
      Optional<String> said,
      List<String> told,
      List<String> pressing,
      Optional<String> ends,
      Optional<List<String>> parts) {}
}
