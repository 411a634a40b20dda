package yett.wording;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EvidenceWordsTest {
  @ParameterizedTest
  @CsvSource({
    "12, clearly for it",
    "4.2, for it",
    "0.4, slightly for it",
    "-1, slightly against it",
    "-3, against it",
    "-Infinity, clearly against it",
    "NaN, off the scale"
  })
  void a_caller_hears_no_unit_of_evidence(double decibans, String words) {
    assertThat(EvidenceWords.WORDS.of(decibans)).isEqualTo(words);
    assertThat(EvidenceWords.WORDS.behind(decibans)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"12, ' (+12.0\u00a0dB)'", "-0.04, ' (-0.0\u00a0dB)'"})
  void somebody_at_the_gate_reads_the_figure(double decibans, String figure) {
    assertThat(EvidenceWords.FIGURES.behind(decibans)).isEqualTo(figure);
  }
}
