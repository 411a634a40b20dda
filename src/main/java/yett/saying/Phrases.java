package yett.saying;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.core.SimpleAnalyzer;
import org.apache.lucene.analysis.miscellaneous.PerFieldAnalyzerWrapper;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.index.IndexWriter;
import org.apache.lucene.index.IndexWriterConfig;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.store.ByteBuffersDirectory;
import org.apache.lucene.store.Directory;
import org.apache.lucene.util.QueryBuilder;

/**
 * Finds things by what people call them, in any wording, order and spelling. Each wording of a
 * thing is a document in a word index; the score of a thing comes from its best matches.
 * Thread-safe.
 */
public final class Phrases {
  private static final String SAID = "said";
  private static final String ALL = "all";
  private static final String ID = "id";

  /** A separator between one thing that is wrong and the next. */
  private static final Pattern PARTS =
      Pattern.compile("(?i)[,;.!?]+|\\band\\b|\\bbut\\b|\\bthen\\b");

  /** Weights of the best, second and third best wording of one thing. */
  private static final double[] FURTHER = {1, 0.35, 0.2};

  /** Weight of a word whose spelling was corrected; another word may have been meant. */
  private static final double PUT_RIGHT = 0.4;

  /** Most things that are offered. */
  private static final int OFFERED = 5;

  /** A further thing is offered if its score is at least this share of the best. */
  private static final double NEARLY = 0.55;

  /** Words that say when it happened, and greetings; they say nothing about what happened. */
  private static final Pattern WHEN =
      Pattern.compile(
          "\\b(last (night|week|month|year)|yesterday|today|this morning|lately|recently|now|a (few"
              + " )?(days?|weeks?) ago|says?|seems?|think|good (morning|afternoon|evening))\\b");

  private final Directory directory = new ByteBuffersDirectory();
  private final Analyzer analyzer;
  private final IndexSearcher searcher;
  private final SpellingCorrector spelling;

  /** Ids by document number, read once because most lines match hundreds of documents. */
  private final String[] ids;

  private final Map<String, Set<String>> stems = new HashMap<>();

  /** For each stem, the number of things that have it. */
  private final Map<String, Integer> spread = new HashMap<>();

  /**
   * Builds the index.
   *
   * @param ways by id of a thing, its wordings
   * @param synonyms words that mean the same: one for all the others
   */
  public Phrases(Map<String, List<String>> ways, Map<String, List<String>> synonyms) {
    SpokenAnalyzer spoken = new SpokenAnalyzer(synonyms);
    this.analyzer =
        new PerFieldAnalyzerWrapper(
            spoken, Map.of(SpellingCorrector.WRITTEN, new SimpleAnalyzer()));
    try {
      write(ways, synonyms);
      this.searcher = new IndexSearcher(DirectoryReader.open(directory));
      this.ids = new String[searcher.getIndexReader().maxDoc()];
      this.spelling = new SpellingCorrector(searcher.getIndexReader(), spoken);
      ways.forEach((id, all) -> stems.put(id, stems(String.join(" . ", all))));
      stems.values().forEach(own -> own.forEach(stem -> spread.merge(stem, 1, Integer::sum)));
    } catch (IOException e) {
      throw new UncheckedIOException(e); // the index is in memory
    }
  }

  /**
   * A thing that was probably meant.
   *
   * @param share of the total score; all shares add up to at most 1
   */
  public record Heard(String id, double share) {}

  private void write(Map<String, List<String>> ways, Map<String, List<String>> synonyms)
      throws IOException {
    try (IndexWriter writer = new IndexWriter(directory, new IndexWriterConfig(analyzer))) {
      for (Map.Entry<String, List<String>> thing : ways.entrySet()) {
        for (String way : thing.getValue()) {
          writer.addDocument(document(thing.getKey(), SAID, way));
        }
        writer.addDocument(document(thing.getKey(), ALL, String.join(" . ", thing.getValue())));
      }
      for (Map.Entry<String, List<String>> same : synonyms.entrySet()) {
        Document words = new Document();
        String text = same.getKey() + " " + String.join(" ", same.getValue());
        words.add(new TextField(SpellingCorrector.WRITTEN, text, Field.Store.NO));
        writer.addDocument(words);
      }
    }
  }

  private static Document document(String id, String field, String text) {
    Document document = new Document();
    document.add(new StringField(ID, id, Field.Store.YES));
    document.add(new TextField(field, text, Field.Store.NO));
    if (field.equals(SAID)) {
      document.add(new TextField(SpellingCorrector.WRITTEN, text, Field.Store.NO));
    }
    return document;
  }

  /** The things that were probably meant, the most probable first; empty if no word is known. */
  public List<Heard> hear(String words, int most) {
    try {
      Map<String, Double> scores = new LinkedHashMap<>();
      add(scores, words, 1);
      List<String> parts =
          Arrays.stream(PARTS.split(words)).filter(p -> p.strip().length() > 3).toList();
      if (parts.size() > 1) {
        for (String part : parts) {
          add(scores, part, 1.0 / parts.size());
        }
      }
      double sum = scores.values().stream().mapToDouble(Double::doubleValue).sum();
      return scores.entrySet().stream()
          .sorted(
              Comparator.comparingDouble((Map.Entry<String, Double> e) -> -e.getValue())
                  .thenComparing(Map.Entry.comparingByKey()))
          .limit(most)
          .map(e -> new Heard(e.getKey(), e.getValue() / sum))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e); // the index is in memory
    }
  }

  /**
   * The fit of each thing to one clause, 0 to 1: the share of the telling words that it accounts
   * for, times the square root of its score relative to the best.
   */
  Map<String, Double> fits(String clause) {
    try {
      String right = spelling.right(clause);
      Map<String, Double> found = best(right);
      double best = found.values().stream().mapToDouble(Double::doubleValue).max().orElse(1);
      String small = clause.toLowerCase(Locale.ROOT);
      String timeless = WHEN.matcher(small).replaceAll(" ");
      Set<String> typed = stems(timeless);
      Set<String> said = stems(timeless.equals(small) ? right : spelling.right(timeless));
      found.replaceAll((id, score) -> share(typed, said, stems.get(id)) * Math.sqrt(score / best));
      return found;
    } catch (IOException e) {
      throw new UncheckedIOException(e); // the index is in memory
    }
  }

  /**
   * Ids of the things that these words name, the best first.
   *
   * @param least share of the words that a thing has to account for, see {@link #covers}
   */
  public List<String> meant(String words, double least) {
    Map<String, Double> fits = new LinkedHashMap<>();
    for (Heard heard : hear(words, stems.size())) {
      double covered = covers(words, heard.id());
      if (covered >= least) {
        fits.put(heard.id(), heard.share() * covered * covered);
      }
    }
    double most = fits.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    return fits.entrySet().stream()
        .filter(e -> e.getValue() >= NEARLY * most)
        .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
        .limit(OFFERED)
        .map(Map.Entry::getKey)
        .toList();
  }

  /**
   * The share of the telling words that also occur among a thing's words, 0 to 1, in the part of
   * the line that fits best. A rare word counts more than a common one, a corrected word less than
   * half. 0 if no word is telling.
   */
  public double covers(String words, String id) {
    Set<String> own = stems.getOrDefault(id, Set.of());
    double most = share(words, own);
    for (String part : PARTS.split(words)) {
      if (part.strip().contains(" ")) {
        most = Math.max(most, share(part, own));
      }
    }
    return most;
  }

  /** The share of the telling words that occur in a text, as {@link #covers}. */
  public double covered(String words, String text) {
    return share(words, stems(text));
  }

  /** {@link #covers} without the words that only say when. */
  double coversTimeless(String words, String id) {
    return covers(WHEN.matcher(words.toLowerCase(Locale.ROOT)).replaceAll(" "), id);
  }

  private double share(String words, Set<String> own) {
    try {
      return share(stems(words), stems(spelling.right(words)), own);
    } catch (IOException e) {
      throw new UncheckedIOException(e); // the index is in memory
    }
  }

  private double share(Set<String> typed, Set<String> right, Set<String> own) {
    double all = 0;
    double found = 0;
    for (String stem : right) {
      double weight = Math.log((1.0 + stems.size()) / (0.5 + spread.getOrDefault(stem, 0)));
      all += weight;
      found += own.contains(stem) ? typed.contains(stem) ? weight : PUT_RIGHT * weight : 0;
    }
    return all > 0 ? found / all : 0;
  }

  /** The stems of the telling words in a text. */
  Set<String> stems(String text) {
    try {
      return new HashSet<>(spelling.stems(text));
    } catch (IOException e) {
      throw new UncheckedIOException(e); // nothing is read from anywhere
    }
  }

  /**
   * Adds scores as shares of their sum, so that a short part of a line counts as much as a long
   * one.
   */
  private void add(Map<String, Double> scores, String words, double weight) throws IOException {
    Map<String, Double> found = best(spelling.right(words));
    double sum = found.values().stream().mapToDouble(Double::doubleValue).sum();
    found.forEach((id, score) -> scores.merge(id, weight * score / sum, Double::sum));
  }

  private Map<String, Double> best(String words) throws IOException {
    Map<String, List<Double>> found = new LinkedHashMap<>();
    for (ScoreDoc hit : search(SAID, words)) {
      found.computeIfAbsent(id(hit), k -> new ArrayList<>()).add((double) hit.score);
    }
    Map<String, Double> scores = new LinkedHashMap<>();
    found.forEach(
        (id, hits) -> {
          double sum = 0;
          for (int i = 0; i < Math.min(FURTHER.length, hits.size()); i++) {
            sum += FURTHER[i] * hits.get(i);
          }
          scores.put(id, sum);
        });
    for (ScoreDoc hit : search(ALL, words)) {
      scores.merge(id(hit), (double) hit.score, Double::sum);
    }
    return scores;
  }

  private String id(ScoreDoc hit) throws IOException {
    if (ids[hit.doc] == null) {
      ids[hit.doc] = searcher.storedFields().document(hit.doc).get(ID);
    }
    return ids[hit.doc];
  }

  private ScoreDoc[] search(String field, String words) throws IOException {
    Query query = new QueryBuilder(analyzer).createBooleanQuery(field, shortened(words));
    int all = Math.max(1, searcher.getIndexReader().maxDoc());
    return query == null ? new ScoreDoc[0] : searcher.search(query, all).scoreDocs;
  }

  /** Cuts a text to as many words as a query may have. */
  private static String shortened(String words) {
    String[] all = words.split(" ");
    int most = Math.min(all.length, IndexSearcher.getMaxClauseCount() / 4);
    return String.join(" ", Arrays.copyOf(all, most));
  }
}
