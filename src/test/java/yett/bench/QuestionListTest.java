package yett.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import yett.knowledge.Check;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.testing.Shipped;

class QuestionListTest {
  private static final Map<String, List<Candidate>> SHIPPED = QuestionList.of(Shipped.BASE);

  @Test
  void questions_stand_with_their_words() {
    Map<String, List<Candidate>> small = QuestionList.of(small(Map.of()));
    assertThat(small.get("complaints"))
        .extracting(Candidate::id)
        .containsExactlyInAnyOrder("does-nothing", "noisy-chain", "stays-open");
    assertThat(small.get("answers: dangers"))
        .containsExactly(
            new Candidate(
                "danger-person",
                "Is anybody hurt, or caught by the gate? nobody (no, nobody),"
                    + " hurt-or-trapped (yes, somebody is hurt or caught)."));
    assertThat(small.get("answers: checks"))
        .contains(
            new Candidate(
                "display-lit",
                "Is the operator's display lit? steady (it is lit), dark (it is dark)."));
    assertThat(words("chain-sag", small.get("answers: checks")))
        .startsWith(
            "How far does the upper run of the chain hang below a straight line? Hold a string"
                + " line from bracket to bracket and measure straight down. A reading in mm. Or:");
    assertThat(words("charger-dead", small.get("truth")))
        .isEqualTo("Charger does not charge. Only with batteries agm.");
  }

  @Test
  void all_that_a_case_can_answer_is_there() {
    List<Candidate> answers =
        SHIPPED.entrySet().stream()
            .filter(e -> e.getKey().startsWith("answers"))
            .flatMap(e -> e.getValue().stream())
            .toList();
    for (Check check : Shipped.BASE.checks().values()) {
      if (check.kind() != Check.Kind.COMPLAINT) {
        assertThat(words(check.id(), answers)).as(check.id()).startsWith(check.ask());
        check
            .outcomes()
            .forEach(o -> assertThat(words(check.id(), answers)).contains(" " + o.id()));
      }
    }
    assertThat(SHIPPED.get("site")).hasSameSizeAs(Shipped.BASE.siteQuestions().keySet());
    assertThat(SHIPPED.get("truth")).hasSameSizeAs(Shipped.BASE.causes().keySet());
  }

  /** Priors and rows of other figures make the same list. */
  @Test
  void nothing_of_likelihoods_is_told() {
    RuleBase other =
        small(
            Map.of(
                "prior: 0.15", "prior: 0.31",
                "chain-slack: {usual: 0.2, slap: 0.8}", "charger-dead: {usual: 0.6, slap: 0.4}",
                "otherwise: {steady: 0.99, dark: 0.01}", "otherwise: {steady: 0.7, dark: 0.3}",
                "consequences: {batteries-low: 0.9}", "consequences: {mains-missing: 0.2}"));
    assertThat(other.causes().get("chain-slack").prior()).isEqualTo(0.31);
    assertThat(other.checks().get("noise-kind").likelihood()).containsOnlyKeys("charger-dead");
    assertThat(QuestionList.of(other)).isEqualTo(QuestionList.of(small(Map.of())));
  }

  private static String words(String id, List<Candidate> list) {
    return list.stream().filter(k -> k.id().equals(id)).findFirst().orElseThrow().words();
  }

  private static RuleBase small(Map<String, String> changes) {
    SortedMap<String, String> files =
        new TreeMap<>(
            KnowledgeSource.folder(Path.of("src/test/resources/small-rule-base")).files());
    files.replaceAll(
        (name, text) -> {
          String changed = text;
          for (Map.Entry<String, String> change : changes.entrySet()) {
            changed = changed.replace(change.getKey(), change.getValue());
          }
          return changed;
        });
    return RuleBase.read(() -> files);
  }
}
