package yett.meaning;

import java.io.IOException;
import java.io.InputStream;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Splits a sentence into the pieces of words that the model was trained with: small letters without
 * accents, punctuation separate, and of each word the longest pieces that the vocabulary has, from
 * the left. (Wu et al. 2016, "Google's Neural Machine Translation System", section 4.1; Devlin et
 * al. 2019, "BERT".)
 */
final class WordPieces {
  private static final Pattern ACCENTS = Pattern.compile("\\p{Mn}+");
  private static final Pattern NOT_TEXT = Pattern.compile("[\\p{Cc}\\p{Cf}\\x{FFFD}&&[^\\s]]");

  /** Punctuation, ASCII symbols and East Asian characters are separate words. */
  private static final Pattern APART =
      Pattern.compile("[\\p{P}$+<=>^`|~]|[\\p{IsHan}]", Pattern.UNICODE_CHARACTER_CLASS);

  private static final Pattern SPACE = Pattern.compile("\\s+", Pattern.UNICODE_CHARACTER_CLASS);
  private static final String WITHIN = "##";
  private static final int LONGEST_WORD = 100;

  private final Map<String, Integer> vocabulary = new HashMap<>();

  /**
   * @param tokenizer JSON with the vocabulary below model
   */
  WordPieces(InputStream tokenizer) throws IOException {
    JsonNode all = JsonMapper.shared().readTree(tokenizer);
    all.path("model")
        .path("vocab")
        .properties()
        .forEach(e -> vocabulary.put(e.getKey(), e.getValue().intValue()));
    if (vocabulary.isEmpty()) {
      throw new IOException("no vocabulary beside the model");
    }
  }

  /**
   * The numbers of the pieces, with those for beginning and end.
   *
   * @param most maximum number of pieces; the rest of the sentence is left out
   */
  long[] of(String sentence, int most) {
    List<Integer> pieces = new ArrayList<>();
    for (String word : SPACE.split(plain(sentence))) {
      if (!word.isEmpty()) {
        pieces.addAll(ofWord(word));
      }
    }
    List<Integer> some = pieces.subList(0, Math.min(pieces.size(), most - 2));
    long[] ids = new long[some.size() + 2];
    ids[0] = vocabulary.get("[CLS]");
    for (int i = 0; i < some.size(); i++) {
      ids[i + 1] = some.get(i);
    }
    ids[ids.length - 1] = vocabulary.get("[SEP]");
    return ids;
  }

  private static String plain(String sentence) {
    String text = NOT_TEXT.matcher(sentence).replaceAll("");
    String small = Normalizer.normalize(text.toLowerCase(Locale.ROOT), Normalizer.Form.NFD);
    return APART.matcher(ACCENTS.matcher(small).replaceAll("")).replaceAll(" $0 ");
  }

  private List<Integer> ofWord(String word) {
    List<Integer> unknown = List.of(vocabulary.get("[UNK]"));
    int length = word.length();
    if (word.codePointCount(0, length) > LONGEST_WORD) {
      return unknown;
    }
    List<Integer> pieces = new ArrayList<>();
    int from = 0;
    while (from < length) {
      int to = length;
      Integer piece = null;
      while (to > from && piece == null) {
        piece = vocabulary.get((from > 0 ? WITHIN : "") + word.substring(from, to));
        to -= piece == null ? 1 : 0;
      }
      if (piece == null) {
        return unknown;
      }
      pieces.add(piece);
      from = to;
    }
    return pieces;
  }
}
