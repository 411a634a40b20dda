package yett;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.io.FileDescriptor;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.springframework.shell.core.command.CommandContext;

/** Which package may know which of the others, and where each library is at home. */
@AnalyzeClasses(
    packages = "yett",
    importOptions = {ImportOption.DoNotIncludeTests.class, ArchitectureTest.Written.class})
class ArchitectureTest {
  /** Leaves out what the rule compiler made: each package of rules has a package of classes. */
  static final class Written implements ImportOption {
    @Override
    public boolean includes(Location location) {
      return !location.matches(Pattern.compile(".*/yett/rules/[a-z]+/.*"));
    }
  }

  /** Packages and libraries of which the rules below speak; a wrong name would forbid nothing. */
  private static final Set<String> OWNERS = new TreeSet<>();

  private static final Set<String> LIBRARIES = new TreeSet<>();

  /** What it takes to run a case without a person, and whoever builds on that. */
  private static final String[] TO_REPLAY = {
    "files",
    "quantity",
    "calculation",
    "knowledge",
    "rules",
    "belief",
    "plan",
    "interview",
    "dispatch",
    "record",
    "replay"
  };

  @ArchTest
  static final ArchRule files_know_nothing =
      knowsOnly("files").because("a file is whole, and its owner's alone, whatever stands in it");

  @ArchTest
  static final ArchRule quantities_know_nothing =
      knowsOnly("quantity").because("a reading means the same wherever it is used");

  @ArchTest
  static final ArchRule calculations_know_only_quantities =
      knowsOnly("calculation", "quantity")
          .because("a formula of the trade is checked against books, not against a rule base");

  @ArchTest
  static final ArchRule cards_know_only_quantities_and_calculations =
      knowsOnly("knowledge", "quantity", "calculation")
          .because("a rule base can be read and checked without reasoning with it");

  @ArchTest
  static final ArchRule rules_know_only_what_they_judge_with =
      knowsOnly("rules", "files", "quantity", "calculation", "knowledge")
          .because("a judgement follows from the answers alone, not from belief or plan");

  @ArchTest
  static final ArchRule worksheets_know_no_case =
      knowsOnly("worksheet", "quantity", "calculation", "knowledge")
          .because("a number of the trade can be worked out without a gate that is broken");

  @ArchTest
  static final ArchRule belief_knows_only_cards =
      knowsOnly("belief", "knowledge")
          .because("the mathematics takes findings as numbers, whoever found them");

  @ArchTest
  static final ArchRule the_plan_knows_only_belief_and_cards =
      knowsOnly("plan", "belief", "knowledge")
          .because("safety is decided before the plan, so the plan has no say in it");

  @ArchTest
  static final ArchRule the_interview_knows_no_screen_and_no_store =
      knowsOnly("interview", "quantity", "calculation", "knowledge", "rules", "belief", "plan")
          .because("the next step is a function of the events, wherever they come from");

  @ArchTest
  static final ArchRule replays_know_no_screen_and_no_store =
      knowsOnly("replay", TO_REPLAY)
          .because("recorded answers stand in for a person, and files for a screen");

  @ArchTest
  static final ArchRule trials_know_no_screen_and_no_store =
      knowsOnly("trial", TO_REPLAY)
          .because("what a change to the cards does is worked out before it is shown");

  @ArchTest
  static final ArchRule the_bench_knows_no_screen_and_no_store =
      knowsOnly("bench", TO_REPLAY)
          .because("what is wrong with a rule base is found before it is shown");

  @ArchTest
  static final ArchRule reviews_know_no_screen_and_no_store =
      knowsOnly("review", "calculation", "knowledge", "rules", "belief", "interview")
          .because("what cases say against the cards follows from their events");

  @ArchTest
  static final ArchRule practice_knows_no_screen_and_no_casebook =
      knowsOnly("practice", TO_REPLAY)
          .because("what was made up must not get among what happened");

  @ArchTest
  static final ArchRule records_know_no_screen_and_no_store =
      knowsOnly(
              "record",
              "quantity",
              "calculation",
              "knowledge",
              "rules",
              "belief",
              "plan",
              "interview",
              "dispatch")
          .because("a record tells what happened, whether it is shown, printed or compared");

  @ArchTest
  static final ArchRule a_dispatch_knows_no_paper_and_no_screen =
      knowsOnly(
              "dispatch",
              "quantity",
              "calculation",
              "knowledge",
              "rules",
              "belief",
              "plan",
              "interview")
          .because("what to bring is worked out before it is printed");

  @ArchTest
  static final ArchRule sayings_know_only_cards =
      knowsOnly("saying", "knowledge")
          .because("what a caller's words mean is decided before anything is made of it");

  @ArchTest
  static final ArchRule text_search_is_for_sayings =
      onlyIn(packages("org.apache.lucene.."), "yett.saying..")
          .because("one package understands words, the others work with complaints");

  @ArchTest
  static final ArchRule figures_know_no_screen_and_no_store =
      knowsOnly("figures", "calculation", "knowledge", "interview")
          .because("what cases tell together follows from their events, wherever they come from");

  @ArchTest
  static final ArchRule the_console_knows_nothing_of_gates =
      knowsOnly("console", "files").because("text on a screen looks right whatever it says");

  @ArchTest
  static final ArchRule the_casebook_knows_nothing_of_reasoning =
      knowsOnly("casebook", "files")
          .because("events are kept as they came, so that an old case outlives its rule base");

  @ArchTest
  static final ArchRule packages_form_no_ring =
      slices()
          .matching("yett.(*)..")
          .should()
          .beFreeOfCycles()
          .because("one cannot be understood or changed alone when two need each other");

  @ArchTest
  static final ArchRule spring_leads_only_the_shell =
      onlyIn(
              packages("org.springframework..")
                  .and(not("org.springframework.jdbc..", "org.springframework.dao..")),
              "yett",
              "yett.shell..")
          .because("reasoning must run, and be tested, without a container");

  @ArchTest
  static final ArchRule spring_jdbc_is_for_the_casebook =
      onlyIn(packages("org.springframework.jdbc..", "org.springframework.dao.."), "yett.casebook..")
          .because("only one package stores anything");

  @ArchTest
  static final ArchRule databases_are_for_the_casebook =
      onlyIn(
              packages("java.sql..", "javax.sql..", "org.sqlite..", "org.flywaydb.."),
              "yett.casebook..")
          .because("only one package stores anything");

  @ArchTest
  static final ArchRule drools_is_for_rules =
      onlyIn(packages("org.drools..", "org.kie.."), "yett.rules..")
          .because("a rule engine is one way to judge, and stays exchangeable");

  @ArchTest
  static final ArchRule the_terminal_is_for_the_console =
      onlyIn(packages("org.jline.."), "yett.console..")
          .because("a pipe, a window and a screen reader get the same text");

  @ArchTest
  static final ArchRule jackson_stays_at_the_edges =
      onlyIn(
              packages("tools.jackson..", "com.fasterxml.jackson.."),
              "yett.knowledge..",
              "yett.interview..",
              "yett.replay..",
              "yett.trial..",
              "yett.practice..",
              "yett.record..",
              "yett.dispatch..",
              "yett.shell..",
              "yett.casebook..")
          .because("text is read and written at the edges; mathematics and rules see records");

  @ArchTest
  static final ArchRule units_are_for_quantities =
      onlyIn(packages("javax.measure..", "tech.units..", "systems.uom.."), "yett.quantity..")
          .because("numbers cross the program in canonical units");

  @ArchTest
  static final ArchRule only_the_console_writes_to_the_standard_streams =
      noClasses()
          .that()
          .resideOutsideOfPackages("yett.console..")
          .should()
          .accessField(System.class, "out")
          .orShould()
          .accessField(System.class, "err")
          .orShould()
          .accessField(FileDescriptor.class, "out")
          .orShould()
          .accessField(FileDescriptor.class, "err")
          .orShould()
          .callMethod(System.class, "console")
          .orShould()
          .callMethod(Throwable.class, "printStackTrace")
          .orShould()
          .callMethod(CommandContext.class, "outputWriter")
          .because("what is shown goes through one cleaning, whoever wrote it");

  @ArchTest
  static void every_package_but_the_shell_has_its_rule(JavaClasses classes) {
    assertThat(
            classes.stream()
                .map(c -> c.getPackageName().split("\\."))
                .filter(names -> names.length > 1 && !names[1].equals("shell"))
                .map(names -> names[1]))
        .isNotEmpty()
        .allMatch(OWNERS::contains);
  }

  @ArchTest
  static void every_library_that_has_a_home_is_used(JavaClasses classes) {
    assertThat(LIBRARIES)
        .hasSizeGreaterThan(10)
        .allSatisfy(
            library ->
                assertThat(classes)
                    .anyMatch(
                        c ->
                            c.getDirectDependenciesFromSelf().stream()
                                .anyMatch(
                                    d -> resideInAPackage(library).test(d.getTargetClass()))));
  }

  private static ArchRule knowsOnly(String owner, String... others) {
    OWNERS.add(owner);
    String[] allowed =
        Stream.concat(Stream.of(owner), Stream.of(others))
            .map(name -> "yett." + name + "..")
            .toArray(String[]::new);
    return noClasses()
        .that()
        .resideInAPackage("yett." + owner + "..")
        .should()
        .dependOnClassesThat(resideInAPackage("yett..").and(not(allowed)));
  }

  private static ArchRule onlyIn(DescribedPredicate<JavaClass> library, String... homes) {
    return noClasses().that().resideOutsideOfPackages(homes).should().dependOnClassesThat(library);
  }

  private static DescribedPredicate<JavaClass> packages(String... names) {
    LIBRARIES.addAll(List.of(names));
    return resideInAnyPackage(names);
  }

  private static DescribedPredicate<JavaClass> not(String... names) {
    return DescribedPredicate.not(resideInAnyPackage(names));
  }
}
