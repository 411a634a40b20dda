package yett.bundle;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import yett.files.Sha256;

/**
 * Ed25519 keys (RFC 8032) from the JDK, stored as PEM text (RFC 7468): the private key as PKCS #8,
 * the public key as SubjectPublicKeyInfo, so that other programs can read and write them (RFC
 * 8410).
 */
final class Keys {
  static final String ALGORITHM = "Ed25519";

  private static final String PRIVATE = "PRIVATE KEY";
  private static final String PUBLIC = "PUBLIC KEY";
  private static final Pattern PEM =
      Pattern.compile("-----BEGIN ([A-Z ]{1,30})-----([A-Za-z0-9+/=\\s]{1,8192})-----END \\1-----");

  private Keys() {}

  static KeyPair fresh() {
    try {
      return KeyPairGenerator.getInstance(ALGORITHM).generateKeyPair();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  static String pem(PrivateKey key) {
    return pem(PRIVATE, key.getEncoded());
  }

  static String pem(PublicKey key) {
    return pem(PUBLIC, key.getEncoded());
  }

  private static String pem(String label, byte[] content) {
    byte[] end = "\n".getBytes(StandardCharsets.US_ASCII);
    return "-----BEGIN "
        + label
        + "-----\n"
        + Base64.getMimeEncoder(64, end).encodeToString(content)
        + "\n-----END "
        + label
        + "-----\n";
  }

  /**
   * @throws BundleException if the text has no such key
   */
  static PrivateKey privateKey(String text) {
    return contents(PRIVATE, text).stream()
        .findFirst()
        .map(
            bytes ->
                made(
                    () ->
                        KeyFactory.getInstance(ALGORITHM)
                            .generatePrivate(new PKCS8EncodedKeySpec(bytes))))
        .orElseThrow(() -> new BundleException("This file holds no private key in PEM."));
  }

  /** All public keys in a text. */
  static List<PublicKey> publicKeys(String text) {
    return contents(PUBLIC, text).stream()
        .map(
            bytes ->
                made(
                    () ->
                        KeyFactory.getInstance(ALGORITHM)
                            .generatePublic(new X509EncodedKeySpec(bytes))))
        .toList();
  }

  private static List<byte[]> contents(String label, String text) {
    List<byte[]> contents = new ArrayList<>();
    Matcher pem = PEM.matcher(text);
    while (pem.find()) {
      if (pem.group(1).equals(label)) {
        contents.add(made(() -> Base64.getMimeDecoder().decode(pem.group(2))));
      }
    }
    return contents;
  }

  /**
   * The name of a key: eight groups of four characters of its SHA-256 digest, to be read out on the
   * telephone.
   */
  static String name(PublicKey key) {
    return Sha256.hex(key.getEncoded(), 16).replaceAll("(....)(?!$)", "$1 ");
  }

  static byte[] signed(byte[] content, PrivateKey key) {
    try {
      Signature signature = Signature.getInstance(ALGORITHM);
      signature.initSign(key);
      signature.update(content);
      return signature.sign();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  static boolean isSigned(byte[] content, byte[] signed, PublicKey key) {
    try {
      Signature signature = Signature.getInstance(ALGORITHM);
      signature.initVerify(key);
      signature.update(content);
      return signature.verify(signed);
    } catch (GeneralSecurityException e) {
      return false; // not even in the form of a signature
    }
  }

  private interface Made<T> {
    T make() throws GeneralSecurityException;
  }

  private static <T> T made(Made<T> of) {
    try {
      return of.make();
    } catch (GeneralSecurityException | IllegalArgumentException e) {
      throw new BundleException("A key in this file is damaged, or is none for " + ALGORITHM + ".");
    }
  }
}
