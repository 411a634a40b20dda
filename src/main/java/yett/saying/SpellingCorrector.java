package yett.saying;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.MultiTerms;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.spell.DirectSpellChecker;
import org.apache.lucene.search.spell.SuggestMode;
import org.apache.lucene.search.spell.SuggestWord;
import org.apache.lucene.search.spell.WordBreakSpellChecker;
import org.apache.lucene.util.BytesRef;

/** Corrects unknown words that are close to a known one. */
final class SpellingCorrector {
  /** Name of the field with every word of the cards and synonyms as written. */
  static final String WRITTEN = "written";

  private final IndexReader reader;
  private final Analyzer stems;
  private final Set<String> known = new HashSet<>();
  private final DirectSpellChecker slips = new DirectSpellChecker();
  private final WordBreakSpellChecker breaks = new WordBreakSpellChecker();

  /**
   * @param stems reduces a word to its stem, so that other forms of known words count as known
   */
  SpellingCorrector(IndexReader reader, Analyzer stems) throws IOException {
    this.reader = reader;
    this.stems = stems;
    slips.setMinQueryLength(3);
    slips.setMaxEdits(2);
    slips.setAccuracy(0.6f);
    slips.setThresholdFrequency(0);
    breaks.setMaxChanges(1);
    breaks.setMinBreakWordLength(3);
    TermsEnum words = MultiTerms.getTerms(reader, WRITTEN).iterator();
    for (BytesRef word = words.next(); word != null; word = words.next()) {
      known.addAll(stems(word.utf8ToString()));
    }
  }

  /** The line with its mistakes corrected, in lower case. */
  String right(String line) throws IOException {
    List<String> right = new ArrayList<>();
    for (String word : line.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}'’]+")) {
      right.add(rightWord(word.replaceAll("['’]", "")));
    }
    return String.join(" ", right);
  }

  private String rightWord(String word) throws IOException {
    if (word.length() < 3 || known.containsAll(stems(word))) {
      return word;
    }
    Term term = new Term(WRITTEN, word);
    SuggestWord[] near =
        slips.suggestSimilar(term, 1, reader, SuggestMode.SUGGEST_WHEN_NOT_IN_INDEX);
    if (near.length > 0) {
      return near[0].string;
    }
    SuggestWord[][] broken =
        breaks.suggestWordBreaks(
            term,
            1,
            reader,
            SuggestMode.SUGGEST_WHEN_NOT_IN_INDEX,
            WordBreakSpellChecker.BreakSuggestionSortMethod.NUM_CHANGES_THEN_MAX_FREQUENCY);
    return broken.length > 0 ? broken[0][0].string + " " + broken[0][1].string : word;
  }

  /** The stems of the telling words in a text, with one word for all synonyms. */
  List<String> stems(String text) throws IOException {
    List<String> found = new ArrayList<>();
    try (TokenStream tokens = stems.tokenStream(WRITTEN, text)) {
      CharTermAttribute stem = tokens.addAttribute(CharTermAttribute.class);
      tokens.reset();
      while (tokens.incrementToken()) {
        found.add(stem.toString());
      }
      tokens.end();
    }
    return found;
  }
}
