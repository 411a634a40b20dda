package yett.casebook;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Where a casebook is, as a JDBC URL, and what of it may be shown: no password in whatever form.
 */
record Address(String url) {
  /** Only what looks like this is shown at all; anything else might hold a password somewhere. */
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

  /** As messages call it. */
  String shown() {
    String head = url.split("\\?", 2)[0];
    return SqliteFile.isUrl(url) || PLAIN.matcher(head).matches() ? head : UNSHOWN;
  }

  /**
   * What tells one casebook from another: several may share a database, each in its schema. Not to
   * be shown.
   */
  String name() {
    var schema = SCHEMA.matcher(url);
    return NAME_AND_PASSWORD.matcher(url.split("[?;]", 2)[0]).replaceAll("//")
        + (schema.find() ? " " + schema.group(1) : "");
  }

  /** A message without what must not be shown; drivers repeat the address that they were given. */
  String without(String message) {
    String clean = message.replace(url, shown());
    for (String secret : secrets()) {
      clean = clean.replace(secret, "…");
    }
    return clean;
  }

  /** The cause of a trouble, if whoever logs it logs no password with it. */
  Throwable cause(Throwable trouble) {
    for (Throwable t = trouble; t != null; t = t.getCause()) {
      String message = String.valueOf(t.getMessage());
      if (!without(message).equals(message)) {
        return null;
      }
    }
    return trouble;
  }

  /** As they stand in the address and as they are meant, the longest first. */
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
