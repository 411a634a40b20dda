package yett.paper;

import java.util.Arrays;
import java.util.Base64;

/**
 * A picture that is embedded in a page.
 *
 * @param address its whole content as a data URL
 */
public record Picture(String address) {
  /** The first bytes of the file formats: W3C, PNG (5.2); ITU-T T.81 (JPEG), B.1.1.3. */
  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

  private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};

  /**
   * @throws IllegalArgumentException if it is neither PNG nor JPEG
   */
  public static Picture of(byte[] content) {
    String type = begins(content, PNG) ? "png" : begins(content, JPEG) ? "jpeg" : "";
    if (type.isEmpty()) {
      throw new IllegalArgumentException("it is neither a PNG nor a JPEG picture");
    }
    return new Picture(
        "data:image/" + type + ";base64," + Base64.getEncoder().encodeToString(content));
  }

  private static boolean begins(byte[] content, byte[] beginning) {
    return content.length > beginning.length
        && Arrays.equals(content, 0, beginning.length, beginning, 0, beginning.length);
  }
}
