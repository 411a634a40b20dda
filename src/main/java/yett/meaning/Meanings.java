package yett.meaning;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import yett.files.NativeLibrary;

/**
 * Represents the meanings of sentences as directions. The smaller the angle between two directions,
 * the more alike the sentences are. Sentences that were known when the program was built are not
 * computed again. May be used by several threads.
 */
public final class Meanings {
  private final SentenceModel model;
  private final Map<String, float[]> known = new ConcurrentHashMap<>();

  private Meanings(SentenceModel model, Map<String, float[]> known) {
    this.model = model;
    this.known.putAll(known);
  }

  /** The native parts in the folder of the program, for the system on which it is built. */
  public static List<NativeLibrary> nativeLibraries() {
    return NativeParts.all();
  }

  /** Loads the model, which takes about a second. */
  public static Meanings load() throws NoModelException {
    return load(SentenceDirections.ofProgram());
  }

  static Meanings load(Map<String, float[]> known) throws NoModelException {
    try {
      return new Meanings(new SentenceModel(), known);
    } catch (IOException e) {
      throw new NoModelException(e.getMessage(), e);
    } catch (LinkageError e) {
      // Left out of this program, or not available for this system.
      String what = e instanceof NoClassDefFoundError ? "left out" : "not made for this system";
      throw new NoModelException("the model is " + what, e);
    }
  }

  /** The direction of a sentence that somebody says; it is not cached. */
  public float[] of(String sentence) {
    float[] direction = known.get(sentence);
    return direction == null ? model.direction(sentence) : direction;
  }

  /** The directions of sentences that are needed repeatedly. */
  public float[][] of(List<String> sentences) {
    return sentences.stream().map(this::of).toArray(float[][]::new);
  }

  /**
   * The similarity of two directions: 1 if they are equal, about 0 if they have nothing in common.
   */
  public static double nearness(float[] one, float[] other) {
    float sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}
