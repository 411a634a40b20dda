package yett.casebook;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * The chain over the events of a case: each is sealed with SHA-256 (FIPS 180-4) over its columns as
 * they stand and the seal before it. Whoever changes an event and knows how can seal all that
 * follows anew; it shows what happened by accident, by another program or by hand.
 */
final class Seals {
  /** Before the first event. */
  static final String NONE = "";

  private Seals() {}

  static String of(String before, EventRow event) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      for (String part :
          List.of(
              before,
              Long.toString(event.seq()),
              event.at(),
              event.by(),
              event.type(),
              event.body())) {
        byte[] bytes = part.getBytes(StandardCharsets.UTF_8);
        sha.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII)); // where a part ends
        sha.update(bytes);
      }
      return HexFormat.of().formatHex(sha.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }
}
