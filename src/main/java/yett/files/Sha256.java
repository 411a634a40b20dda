package yett.files;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Identifies content by its SHA-256 digest (FIPS 180-4). */
public final class Sha256 {
  /** Bytes of the whole digest. */
  public static final int WHOLE = 32;

  private Sha256() {}

  /** The first bytes of the digest, in hexadecimal. */
  public static String hex(byte[] content, int bytes) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(content);
      return HexFormat.of().formatHex(digest, 0, bytes);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e); // every Java has it
    }
  }
}
