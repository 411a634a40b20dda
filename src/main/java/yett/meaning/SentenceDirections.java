package yett.meaning;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Stores the directions of sentences that were computed during the build, one byte for each number.
 */
public final class SentenceDirections {
  private static final String NAME = "sentence-directions.bin";

  /** Every number of a direction of 384 is well below this. A limit below 1 allows finer steps. */
  private static final float LARGEST = 0.4f;

  private SentenceDirections() {}

  /** The directions from the build; empty in a program without the model. */
  static Map<String, float[]> ofProgram() {
    try (InputStream in = SentenceDirections.class.getResourceAsStream("/" + NAME)) {
      return in == null ? Map.of() : read(in);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read a part of the program", e);
    }
  }

  private static Map<String, float[]> read(InputStream file) throws IOException {
    DataInputStream in = new DataInputStream(new BufferedInputStream(file));
    Map<String, float[]> all = new HashMap<>();
    int count = in.readInt();
    byte[] bytes = new byte[in.readInt()];
    for (int i = 0; i < count; i++) {
      String sentence = in.readUTF();
      in.readFully(bytes);
      all.put(sentence, direction(bytes));
    }
    return all;
  }

  private static float[] direction(byte[] bytes) {
    float[] direction = new float[bytes.length];
    double length = 0;
    for (byte b : bytes) {
      length += b * b;
    }
    for (int i = 0; i < bytes.length; i++) {
      direction[i] = (float) (bytes[i] / Math.sqrt(length));
    }
    return direction;
  }

  /**
   * Computes the directions of all these sentences during the build.
   *
   * @param program the folder with the program's classes; directions that are already there are
   *     kept
   */
  public static void write(Collection<String> sentences, Path program)
      throws IOException, NoModelException {
    Path file = program.resolve(NAME);
    Map<String, float[]> before = new HashMap<>();
    if (Files.exists(file)) {
      try (InputStream in = Files.newInputStream(file)) {
        before = read(in);
      }
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      write(new TreeSet<>(sentences), Meanings.load(before), out);
    }
    Files.write(file, bytes.toByteArray());
  }

  private static void write(Collection<String> sentences, Meanings meanings, DataOutputStream out)
      throws IOException {
    out.writeInt(sentences.size());
    out.writeInt(meanings.of("").length);
    Map<String, float[]> all = new ConcurrentHashMap<>();
    sentences.parallelStream().forEach(s -> all.put(s, meanings.of(s))); // who builds waits for it
    for (String sentence : sentences) {
      out.writeUTF(sentence);
      for (float number : all.get(sentence)) {
        out.writeByte(Math.round(Math.max(-1, Math.min(1, number / LARGEST)) * Byte.MAX_VALUE));
      }
    }
  }
}
