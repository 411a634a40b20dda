package yett.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Words are cut as the model was taught. What is expected came from another program: the Hugging
 * Face tokenizers library (0.21, by way of ai.djl.huggingface:tokenizers 0.36.0) with the model's
 * own tokenizer.json, without padding.
 */
class WordPiecesTest {
  private static WordPieces pieces() throws IOException {
    try (InputStream in =
        WordPieces.class.getResourceAsStream("/all-minilm-l6-v2-q-tokenizer.json")) {
      return new WordPieces(in);
    }
  }

  @Test
  void sentences_are_cut_as_the_library_of_the_model_cuts_them() throws IOException {
    WordPieces pieces = pieces();
    List<String> lines = Files.readAllLines(Path.of("src/test/resources/sayings/pieces.tsv"));
    assertThat(lines).hasSizeGreaterThan(40);
    for (String line : lines) {
      String[] both = line.split("\\t", 2);
      assertThat(Arrays.toString(pieces.of(both[1], 512))).as(both[1]).isEqualTo(both[0]);
    }
  }

  @Test
  void what_is_too_long_is_cut_off_behind() throws IOException {
    long[] all = pieces().of("the gate ".repeat(500), 128);
    assertThat(all).hasSize(128).startsWith(101).endsWith(102);
  }
}
