package yett.meaning;

import ai.onnxruntime.OnnxTensor;
import ai.onnxruntime.OrtEnvironment;
import ai.onnxruntime.OrtException;
import ai.onnxruntime.OrtSession;
import java.io.IOException;
import java.io.InputStream;
import java.nio.LongBuffer;
import java.util.Arrays;
import java.util.Map;

/**
 * The model that turns a sentence into a direction of 384 numbers, so that sentences of similar
 * meaning are close to each other (all-MiniLM-L6-v2, quantised to 8 bits). It uses one thread and
 * takes some milliseconds for a sentence. May be used by several threads.
 */
final class SentenceModel {
  private static final String MODEL = "/all-minilm-l6-v2-q.onnx";
  private static final String TOKENIZER = "/all-minilm-l6-v2-q-tokenizer.json";

  /** The model was trained with sentences up to this length; nobody says more at once. */
  private static final int MOST_PIECES = 128;

  private final WordPieces pieces;
  private final OrtEnvironment environment;
  private final OrtSession session;

  SentenceModel() throws IOException {
    try (InputStream tokenizer = stream(TOKENIZER);
        InputStream model = stream(MODEL)) {
      pieces = new WordPieces(tokenizer);
      NativeParts.find();
      environment = OrtEnvironment.getEnvironment();
      environment.setTelemetry(false);
      try (OrtSession.SessionOptions options = new OrtSession.SessionOptions()) {
        options.setIntraOpNumThreads(1);
        options.setInterOpNumThreads(1);
        session = environment.createSession(model.readAllBytes(), options);
      }
    } catch (OrtException e) {
      throw new IOException("the model cannot be loaded", e);
    }
  }

  private static InputStream stream(String name) throws IOException {
    InputStream stream = SentenceModel.class.getResourceAsStream(name);
    if (stream == null) {
      throw new IOException("the model is not part of this program");
    }
    return stream;
  }

  /** The direction of a sentence, of length 1. */
  float[] direction(String sentence) {
    long[] ids = pieces.of(sentence, MOST_PIECES);
    long[] ones = new long[ids.length];
    Arrays.fill(ones, 1);
    long[] shape = {1, ids.length};
    try (OnnxTensor words = OnnxTensor.createTensor(environment, LongBuffer.wrap(ids), shape);
        OnnxTensor mask = OnnxTensor.createTensor(environment, LongBuffer.wrap(ones), shape);
        OnnxTensor types =
            OnnxTensor.createTensor(environment, LongBuffer.wrap(new long[ids.length]), shape);
        OrtSession.Result result =
            session.run(
                Map.of("input_ids", words, "attention_mask", mask, "token_type_ids", types))) {
      return mean(((float[][][]) result.get(0).getValue())[0]);
    } catch (OrtException e) {
      throw new IllegalStateException("the model failed at \"" + sentence + "\"", e);
    }
  }

  private static float[] mean(float[][] pieces) {
    double[] sum = new double[pieces[0].length];
    for (float[] piece : pieces) {
      for (int i = 0; i < sum.length; i++) {
        sum[i] += piece[i];
      }
    }
    double length = Math.sqrt(Arrays.stream(sum).map(x -> x * x).sum());
    float[] direction = new float[sum.length];
    for (int i = 0; i < sum.length; i++) {
      direction[i] = (float) (sum[i] / length);
    }
    return direction;
  }
}
