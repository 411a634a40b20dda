package yett.record;

import java.util.Collection;
import java.util.regex.Pattern;

/**
 * Builds a Markdown text that reads well unrendered: headings, paragraphs and lists, no tables. All
 * words come in as they are said, whoever wrote them (a card, an add-on, a caller), and are made
 * plain text here: only the builder itself can put marks of Markdown or HTML on the page.
 */
final class Markdown {
  private static final Pattern SPECIAL = Pattern.compile("[\\\\`*_\\[\\]<>|~]|&(?=[#A-Za-z])");
  private static final Pattern BLOCK = Pattern.compile("^(#|[-+=](?=\\s|$|[-=])|>)");
  private static final Pattern NUMBERED = Pattern.compile("^(\\d{1,9})([.)])(?=\\s|$)");
  private static final Pattern INVISIBLE = Pattern.compile("[\\p{Cc}\\p{Cf}]");

  private final StringBuilder out = new StringBuilder();
  private boolean inList;

  /** Words, so that they stand on the page as they were typed, on one line. */
  static String plain(String words) {
    String line = words.strip().replaceAll("\\s*\\R\\s*", " / ").replace('\t', ' ');
    String visible = INVISIBLE.matcher(line).replaceAll("");
    String escaped = SPECIAL.matcher(visible).replaceAll("\\\\$0");
    escaped = BLOCK.matcher(escaped).replaceAll("\\\\$1");
    return NUMBERED.matcher(escaped).replaceAll("$1\\\\$2");
  }

  Markdown title(String words) {
    out.append("# ").append(plain(words)).append('\n');
    inList = false;
    return this;
  }

  Markdown heading(String words) {
    out.append("\n## ").append(plain(words)).append('\n');
    inList = false;
    return this;
  }

  Markdown paragraph(String words) {
    return block(plain(words));
  }

  /** A paragraph that begins with a word that stands out. */
  Markdown paragraph(String strong, String words) {
    return block("**" + plain(strong) + "**: " + plain(words));
  }

  private Markdown block(String text) {
    out.append('\n').append(text).append('\n');
    inList = false;
    return this;
  }

  Markdown item(String words) {
    return line("- ", words);
  }

  /** An item of a numbered list. */
  Markdown item(int number, String words) {
    return line(number + ". ", words);
  }

  /** An item inside the last one. */
  Markdown inner(String words) {
    return line("    - ", words);
  }

  Markdown items(Collection<String> all) {
    all.forEach(this::item);
    return this;
  }

  /** A heading with its items; nothing if there are none. */
  Markdown list(String words, Collection<String> all) {
    return all.isEmpty() ? this : heading(words).items(all);
  }

  private Markdown line(String mark, String words) {
    out.append(inList ? "" : "\n").append(mark).append(plain(words)).append('\n');
    inList = true;
    return this;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
