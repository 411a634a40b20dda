package yett.casebook;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * The address of a casebook as a JDBC URL. It also decides what of it may be shown; a password
 * never is, in any form.
 */
record Address(String url) {
  /**
   * An address is shown only if it matches this; anything else might contain a password somewhere.
   */
  private static final Pattern PLAIN =
      Pattern.compile(
          "jdbc:[a-z]+:(//(HOST(:\\d{1,5})?)(,HOST(:\\d{1,5})?)*)?/?[\\p{L}\\p{N}._-]*"
              .replace("HOST", "([\\p{L}\\p{N}._-]+|\\[[0-9a-fA-F:.]+\\])"));

  private static final String UNSHOWN = "The address in YETT_CASEBOOK";

  private static final List<Pattern> SECRETS =
      List.of(
          Pattern.compile("(?i)(?:password|passwd|pass|pwd)\\s*(?:=|%3d|:|\\s)\\s*([^&;\\s]+)"),
          Pattern.compile("//[^:@/]*(?::|%3a|%3A)(.*)(?:@|%40)"));

  private static final Pattern NAME_AND_PASSWORD = Pattern.compile("//[^/@]*@");
  private static final Pattern SCHEMA = Pattern.compile("[?&]currentSchema=([^&]*)");

  boolean isServer() {
    return PostgresServer.isUrl(url);
  }

  /** The address as shown in messages. */
  String shown() {
    String head = url.split("\\?", 2)[0];
    return SqliteFile.isUrl(url) || PLAIN.matcher(head).matches() ? head : UNSHOWN;
  }

  /**
   * A name that tells this casebook from every other; several may share a database, each in its own
   * schema. It must not be shown.
   */
  String name() {
    var schema = SCHEMA.matcher(url);
    return NAME_AND_PASSWORD.matcher(url.split("[?;]", 2)[0]).replaceAll("//")
        + (schema.find() ? " " + schema.group(1) : "");
  }

  /** A message with the secrets removed; drivers repeat the address that they were given. */
  String without(String message) {
    String clean = message.replace(url, shown());
    for (String secret : secrets()) {
      clean = clean.replace(secret, "…");
    }
    return clean;
  }

  /** The cause to attach to an exception, if logging it reveals no password. */
  Throwable cause(Throwable trouble) {
    for (Throwable t = trouble; t != null; t = t.getCause()) {
      String message = String.valueOf(t.getMessage());
      if (!without(message).equals(message)) {
        return null;
      }
    }
    return trouble;
  }

  /** The secrets both as written in the address and decoded, the longest first. */
  private Set<String> secrets() {
    Set<String> found =
        new TreeSet<>(
            Comparator.comparingInt(String::length).reversed().thenComparing(String::compareTo));
    for (String form : List.of(url, decoded(url))) {
      for (Pattern pattern : SECRETS) {
        pattern
            .matcher(form)
            .results()
            .map(m -> m.group(1))
            .filter(secret -> !secret.isEmpty())
            .forEach(
                secret -> {
                  found.add(secret);
                  found.add(decoded(secret));
                });
      }
    }
    return found;
  }

  private static String decoded(String text) {
    try {
      return URLDecoder.decode(text, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      return text;
    }
  }
}
