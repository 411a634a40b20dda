package yett.casebook;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/**
 * Chains the events of a case with seals: the SHA-256 digest (FIPS 180-4) over the columns of an
 * event as stored and the seal before it. Somebody who changes an event and knows the method can
 * renew all later seals. The seals therefore show changes by accident, by another program or by
 * hand, but not by an attacker.
 */
final class Seals {
  /** The seal before the first event. */
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
        sha.update((bytes.length + ":").getBytes(StandardCharsets.US_ASCII)); // separates the parts
        sha.update(bytes);
      }
      return HexFormat.of().formatHex(sha.digest());
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }
}
