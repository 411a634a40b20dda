package yett.saying;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.CharArraySet;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.StopFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.core.FlattenGraphFilter;
import org.apache.lucene.analysis.en.PorterStemFilter;
import org.apache.lucene.analysis.pattern.PatternReplaceFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.synonym.SynonymGraphFilter;
import org.apache.lucene.analysis.synonym.SynonymMap;
import org.apache.lucene.util.CharsRef;
import org.apache.lucene.util.CharsRefBuilder;

/**
 * Normalises speech for the index: lower case, no apostrophes, one word for all synonyms, no empty
 * words, stems. So "It doesn't shut" and "will not close" become similar.
 */
final class SpokenAnalyzer extends Analyzer {
  private static final java.util.regex.Pattern APOSTROPHE = java.util.regex.Pattern.compile("['’]");

  /**
   * Words that carry no information about a fault. "Not", "no", "on", "off" and "by" do, so they
   * stay.
   */
  private static final CharArraySet EMPTY =
      new CharArraySet(
          List.of(
              "a", "an", "the", "is", "are", "was", "be", "been", "it", "its", "this", "that",
              "there", "theres", "i", "im", "we", "you", "he", "she", "they", "my", "our", "your",
              "and", "or", "but", "of", "to", "in", "at", "with", "from", "has", "have", "had",
              "do", "does", "did", "so", "some", "very", "really", "just", "now", "like", "as",
              "for", "me", "us", "what", "which", "would", "can", "could", "gate", "also", "too"),
          true);

  private final SynonymMap synonyms;

  SpokenAnalyzer(Map<String, List<String>> synonyms) {
    this.synonyms = map(synonyms);
  }

  private static SynonymMap map(Map<String, List<String>> synonyms) {
    try {
      SynonymMap.Builder builder = new SynonymMap.Builder(true);
      synonyms.forEach(
          (word, others) -> others.forEach(o -> builder.add(words(o), words(word), false)));
      return builder.build();
    } catch (IOException e) {
      throw new UncheckedIOException(e); // cannot happen: nothing is read from a file
    }
  }

  private static CharsRef words(String expression) {
    String[] words = APOSTROPHE.matcher(expression).replaceAll("").split(" ");
    return SynonymMap.Builder.join(words, new CharsRefBuilder());
  }

  @Override
  protected TokenStreamComponents createComponents(String field) {
    Tokenizer words = new StandardTokenizer();
    TokenStream small = new LowerCaseFilter(words);
    TokenStream plain = new PatternReplaceFilter(small, APOSTROPHE, "", true);
    TokenStream same =
        synonyms.fst == null
            ? plain
            : new FlattenGraphFilter(new SynonymGraphFilter(plain, synonyms, true));
    TokenStream telling = new StopFilter(same, EMPTY);
    return new TokenStreamComponents(words, new PorterStemFilter(telling));
  }
}
