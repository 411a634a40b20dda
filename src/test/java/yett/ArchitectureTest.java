package yett;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
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
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import java.io.FileDescriptor;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
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

  /** The house, from the ground up: each floor, and the floors that it may know. */
  private static final String FLOORS =
      """
      files
      console      files
      casebook     files
      paper
      quantity
      calculation  quantity
      knowledge    quantity calculation
      bundle       files knowledge
      meaning      files
      saying       knowledge meaning
      worksheet    quantity calculation knowledge
      rules        files quantity calculation knowledge
      belief       knowledge
      plan         knowledge belief
      interview    quantity calculation knowledge rules belief plan
      wording      quantity calculation knowledge rules belief plan interview
      dispatch     quantity calculation knowledge rules belief plan interview
      record       paper quantity calculation knowledge rules belief plan interview wording dispatch
      figures      calculation knowledge interview
      review       calculation knowledge rules belief interview
      replay       files quantity calculation knowledge rules belief plan interview wording dispatch record
      trial        files paper quantity calculation knowledge rules belief plan interview wording dispatch record replay
      bench        files paper quantity calculation knowledge saying rules belief plan interview wording dispatch record replay
      practice     files paper quantity calculation knowledge rules belief plan interview wording dispatch record replay
      desk         files casebook bundle quantity knowledge rules belief interview wording
      command      files console paper casebook bundle quantity calculation knowledge meaning saying worksheet rules belief plan \
                   interview wording dispatch record figures review replay trial bench practice desk
      """;

  /** Libraries of which the rules below speak; a wrong name would forbid nothing. */
  private static final Set<String> LIBRARIES = new TreeSet<>();

  @ArchTest
  static final ArchRule each_floor_knows_only_floors_below =
      floors().because("one that knows its neighbours or the floors above cannot be tried alone");

  @ArchTest
  static final ArchRule no_two_packages_of_commands_know_each_other =
      slices()
          .matching("yett.command.(*)..")
          .should()
          .beFreeOfCycles()
          .because("a call is led within a conversation, which must not know how");

  @ArchTest
  static final ArchRule no_two_packages_within_commands_know_each_other =
      slices()
          .matching("yett.command.(**)")
          .should()
          .beFreeOfCycles()
          .because("a part of the dialogue can be changed without reading those that use it");

  @ArchTest
  static final ArchRule no_two_packages_of_an_interview_know_each_other =
      slices()
          .matching("yett.interview.(**)")
          .should()
          .beFreeOfCycles()
          .because("a part of a case can be changed without reading those that use it");

  @ArchTest
  static final ArchRule text_search_is_for_sayings =
      onlyIn(packages("org.apache.lucene.."), "yett.saying..")
          .because("one package understands words, the others work with complaints");

  @ArchTest
  static final ArchRule the_model_is_for_meanings =
      onlyIn(packages("ai.onnxruntime.."), "yett.meaning..")
          .because("a program without the model runs, and only one package has to know");

  @ArchTest
  static final ArchRule spring_leads_only_the_commands =
      onlyIn(
              packages("org.springframework..")
                  .and(not("org.springframework.jdbc..", "org.springframework.dao..")),
              "yett",
              "yett.command..")
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
  static final ArchRule printing_is_for_paper =
      onlyIn(packages("com.openhtmltopdf..", "java.awt.."), "yett.paper..")
          .because("one package makes pages, the others fill them");

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
              "yett.meaning..",
              "yett.interview..",
              "yett.replay..",
              "yett.trial..",
              "yett.practice..",
              "yett.record..",
              "yett.dispatch..",
              "yett.desk..",
              "yett.command..",
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

  /** A floor without a class, and a class on no floor, break the rule too. */
  private static LayeredArchitecture floors() {
    LayeredArchitecture house =
        layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .ensureAllClassesAreContainedInArchitecture()
            .layer("program")
            .definedBy("yett");
    List<List<String>> floors =
        FLOORS.lines().map(line -> List.of(line.strip().split(" +"))).toList();
    for (List<String> floor : floors) {
      house = house.layer(floor.get(0)).definedBy("yett." + floor.get(0) + "..");
    }
    for (List<String> floor : floors) {
      String[] known = floor.subList(1, floor.size()).toArray(String[]::new);
      var where = house.whereLayer(floor.get(0));
      house = known.length == 0 ? where.mayNotAccessAnyLayer() : where.mayOnlyAccessLayers(known);
    }
    return house;
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
