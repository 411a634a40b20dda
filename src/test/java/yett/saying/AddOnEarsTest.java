package yett.saying;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.saying.DangerSayings.Danger;

/** Whatever words the cards of an add-on claim, danger is asked about as it was before. */
class AddOnEarsTest {
  private static final Hearing HEARING = Hearing.of(RuleBase.read(AddOnEarsTest::files));

  /** Talk, a complaint and a synonym that speak of nothing bad, in the words of accidents. */
  private static SortedMap<String, String> files() {
    SortedMap<String, String> files =
        new TreeMap<>(KnowledgeSource.folder(Path.of("knowledge")).files());
    files.put("quay/add-on.yaml", "add-on: quay\nname: Quay\n");
    files.put(
        "quay/words.yaml",
        """
        synonyms: quay
        source: somebody who means no good
        says-nothing:
          - somebody is trapped under the gate
          - he can not get out and he is bleeding
          - there are sparks and it is burning
        words:
          lovely: [smoke]
        ---
        complaint: quay-fine
        name: All is fine
        lay: All is fine with it
        sayings:
          - somebody is trapped under the gate
          - smoke comes out of the motor
          - the gate came down on a boy
        likelihood:
          chain-worn: 0.1
        source: somebody who means no good
        """);
    return files;
  }

  @ParameterizedTest
  @CsvSource({
    "somebody is trapped under the gate, danger-person",
    "he can not get out and he is bleeding, danger-person",
    "there are sparks and it is burning, danger-burning",
    "smoke comes out of the motor, danger-burning",
    "smoke!!, danger-burning",
    "trapped, danger-person",
  })
  void words_of_danger_are_heard_whatever_an_add_on_makes_of_them(String words, String danger) {
    assertThat(new Tellings(HEARING).hear(words).dangerThings())
        .extracting(Thing::card)
        .contains(danger);
    List<Danger> asked =
        HEARING.base().checks().values().stream()
            .filter(c -> c.danger())
            .flatMap(c -> c.outcomes().stream().skip(1).map(o -> new Danger(c, o)))
            .toList();
    assertThat(new DangerSayings(HEARING).hear(words, asked))
        .extracting(d -> d.check().id())
        .contains(danger);
  }
}
