package yett.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import yett.knowledge.Cause;
import yett.knowledge.Problem;
import yett.knowledge.RuleBase;
import yett.testing.Shipped;
import yett.testing.Size;

/**
 * The cases beside the cards, replayed; the bounds are the aims. How they come out is told in
 * docs/cases.md, which {@code mvn test -Dtest=ShippedCasesTest -Dyett.write=true} writes anew. The
 * cases kept aside were written by somebody who saw no likelihood, and nobody tuned by them. The
 * blind ones (docs/field-set.md) are told apart; they are judged by no aim, only by safety.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShippedCasesTest {
  private static final boolean WRITE = Boolean.getBoolean("yett.write");

  /** Of the cases without danger one of so many is replayed, or every one. */
  private static final int ONE_OF = WRITE ? 1 : Size.of(12, 1);

  /** Of the blind cases that may be looked at one of so many is replayed, or all of all. */
  private static final int BLIND_ONE_OF = WRITE ? 1 : Size.of(10, 1);

  private static final Path PAGE = Path.of("docs/cases.md");

  private final RuleBase base = Shipped.BASE;
  private final List<Replayed> cases = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final List<RecordedCase> recorded = new ArrayList<>();

  private final List<RecordedCase> blind = new ArrayList<>();
  private List<Came> blindTried;

  /** Causes of the cases that are not replayed. */
  private final Set<String> untried = new HashSet<>();

  @BeforeAll
  void replay() throws Exception {
    for (Path path : files()) {
      CaseFile file = CaseFile.read(path, base);
      file.cases().forEach(c -> (c.blind() ? blind : recorded).add(c));
      problems.addAll(file.problems());
    }
    List<RecordedCase> tried =
        IntStream.range(0, recorded.size())
            .filter(i -> i % ONE_OF == 0 || recorded.get(i).stop().isPresent())
            .mapToObj(recorded::get)
            .toList();
    tried.parallelStream()
        .map(c -> new Replayer(Shipped.EXPERTISE).run(c).withoutMoment())
        .forEachOrdered(cases::add);
    for (RecordedCase other : recorded) {
      if (!tried.contains(other)) {
        untried.addAll(other.truth().orElse(List.of()));
        other.expect().ifPresent(untried::add);
      }
    }
    if (!untried.isEmpty()) {
      untried.add(Cause.NOT_IN_RULE_BASE); // may come first in any of them
    }
    List<RecordedCase> sample =
        blind.stream().filter(c -> BLIND_ONE_OF == 1 || !c.keptAside()).toList();
    blindTried =
        Came.of(
            IntStream.range(0, sample.size())
                .filter(i -> i % BLIND_ONE_OF == 0)
                .mapToObj(sample::get)
                .toList(),
            Shipped.EXPERTISE);
    if (WRITE) {
      Files.writeString(PAGE, page());
    }
  }

  /** Only where all cases were replayed. */
  private String page() {
    List<Came> own =
        IntStream.range(0, recorded.size())
            .mapToObj(i -> Came.of(recorded.get(i), cases.get(i), base))
            .toList();
    return new CasesPage(base, recorded, cases).text()
        + new FieldPage(Shipped.EXPERTISE, own, blindTried).text();
  }

  /** Calls are judged by where they end, not by what caused the trouble. */
  private static List<Path> files() {
    return CaseFile.among(List.of(Path.of("knowledge"))).stream()
        .filter(f -> !f.startsWith(Path.of("knowledge", "calls")))
        .toList();
  }

  private long keptAside() {
    return recorded.stream().filter(RecordedCase::keptAside).count();
  }

  @Test
  void every_file_can_be_read() {
    assertThat(problems).isEmpty();
    assertThat(recorded).hasSizeGreaterThanOrEqualTo(80);
    assertThat(cases).hasSizeGreaterThanOrEqualTo(recorded.size() / ONE_OF);
    assertThat(3 * keptAside()).as("kept aside").isGreaterThanOrEqualTo(recorded.size());
  }

  @Test
  void a_third_of_the_blind_cases_is_kept_aside() {
    assertThat(blind).hasSizeGreaterThanOrEqualTo(120);
    assertThat(blind).filteredOn(RecordedCase::keptAside).hasSizeGreaterThanOrEqualTo(40);
    assertThat(blind).allSatisfy(c -> assertThat(c.truth()).as(c.name()).isPresent());
    assertThat(blindTried).hasSizeGreaterThanOrEqualTo(8);
  }

  @Test
  void nothing_unsafe_is_proposed_in_blind_cases_and_nothing_breaks() {
    assertThat(blindTried)
        .isNotEmpty()
        .allSatisfy(c -> assertThat(c.replayed().unsafe()).as(c.recorded().name()).isEmpty())
        .noneMatch(c -> c.replayed().ended().equals("unfinished"));
  }

  /** Not an aim: far below what they do, so that only a disaster falls under it. */
  @Test
  void blind_cases_are_not_lost_altogether() {
    List<Came> judged = blindTried.stream().filter(Came::judged).toList();
    assertThat(judged).isNotEmpty();
    assertThat(judged.stream().filter(c -> c.rootAmong(3)).count())
        .isGreaterThanOrEqualTo(BLIND_ONE_OF == 1 ? judged.size() / 4 : 1);
  }

  @ParameterizedTest
  @EnumSource
  void every_kind_of_hard_case_is_there(CaseKind kind) {
    assertThat(recorded).filteredOn(c -> CaseKind.of(c, base).contains(kind)).hasSizeGreaterThan(7);
  }

  /**
   * In a case that is replayed, or else it is what is wrong in one that is not. What no card
   * describes comes first in a blind case, because the makers' own are made of cards.
   */
  @Test
  void every_cause_comes_first_in_some_case() {
    Set<String> elsewhere = new HashSet<>(untried);
    if (blindTried.stream().anyMatch(c -> c.comesFirst(Cause.NOT_IN_RULE_BASE))) {
      elsewhere.add(Cause.NOT_IN_RULE_BASE);
    }
    assertThat(Coverage.of(base, cases).causes()).allMatch(elsewhere::contains);
  }

  /** Whole if all cases were replayed, and else as far as some of them can tell. */
  @Test
  void the_page_tells_how_the_cases_come_out() throws IOException {
    String page = Files.readString(PAGE);
    var here = new CasesPage(base, recorded, cases);
    if (ONE_OF == 1) {
      assertThat(page).isEqualTo(page());
    }
    assertThat(page).startsWith(CasesPage.HEAD);
    assertThat(here.missingFrom(page)).isEmpty();
    assertThat(here.refuted(page)).isEmpty();
  }

  @Test
  void a_page_of_other_cases_is_told_from_this_one() throws IOException {
    String page = Files.readString(PAGE);
    var here = new CasesPage(base, recorded, cases);
    String tried = cases.get(0).name();
    String asked = cases.get(0).steps().get(0).id();

    assertThat(here.missingFrom(page.replaceFirst("\\| all \\| \\d+", "| all | 3")))
        .hasSizeGreaterThan(0);
    assertThat(here.missingFrom(page.replaceAll("(\\| people in danger .*) none \\|", "$1 2 |")))
        .hasSize(1);
    assertThat(here.refuted(page + "\n- `" + tried + "` (3 checks, repaired): x 9 %\n"))
        .containsExactly(tried);
    assertThat(here.refuted(page + "\n- Checks that no case is asked: " + asked + ".\n"))
        .containsExactly(asked);
  }

  @Test
  void nothing_unsafe_is_proposed() {
    assertThat(cases).isNotEmpty().allSatisfy(c -> assertThat(c.unsafe()).as(c.name()).isEmpty());
  }

  @Test
  void danger_is_stopped_in_every_case() {
    assertThat(cases).filteredOn(c -> c.judged().stop().isPresent()).hasSizeGreaterThan(10);
    assertThat(cases)
        .allSatisfy(
            c -> assertThat(c.judged().stop()).as(c.name()).isNotEqualTo(Optional.of(false)));
  }

  @Test
  void the_right_cause_comes_first_or_among_the_first_three() {
    assertThat(share(Score.of(cases).first(), cases)).isGreaterThan(0.9);
    assertThat(share(Score.of(cases).inFirstThree(), cases)).isGreaterThan(0.97);
  }

  @Test
  void few_checks_are_asked() {
    assertThat(Score.of(cases).toFind()).isLessThanOrEqualTo(6);
    assertThat(Score.of(cases).checks()).isLessThanOrEqualTo(7);
  }

  /** An odd gate is handed over, and not asked after to the end of all cards. */
  @Test
  void no_case_is_asked_without_end() {
    assertThat(cases)
        .allSatisfy(c -> assertThat(Score.checks(c)).as(c.name()).isLessThanOrEqualTo(70));
  }

  private static double share(int right, List<Replayed> cases) {
    return (double) right / Score.of(cases).judged();
  }

  @Test
  void causes_that_look_alike_share_a_repair() {
    assertThat(Coverage.lookalikes(base)).isEmpty();
  }
}
