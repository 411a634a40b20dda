package yett.record;

import java.util.regex.Pattern;

/**
 * Builds a Markdown text that is easy to read as plain text: headings, paragraphs and lists, no
 * tables. All words, whoever wrote them (a card, an add-on, a caller), are turned into plain text
 * here; only the builder itself can put Markdown or HTML on the page.
 */
public final class Markdown implements Outline {
  private static final Pattern SPECIAL = Pattern.compile("[\\\\`*_\\[\\]<>|~]|&(?=[#A-Za-z])");
  private static final Pattern BLOCK = Pattern.compile("^(#|[-+=](?=\\s|$|[-=])|>)");
  private static final Pattern NUMBERED = Pattern.compile("^(\\d{1,9})([.)])(?=\\s|$)");

  /**
   * A run of blanks and line ends. The quantifier is possessive, so that a long run is scanned only
   * once.
   */
  private static final Pattern BLANKS = Pattern.compile("[\\s\\u0085\\u2028\\u2029]++");

  private static final Pattern BREAK = Pattern.compile("\\R");
  private static final Pattern INVISIBLE = Pattern.compile("[\\p{Cc}\\p{Cf}]");

  private final StringBuilder out = new StringBuilder();
  private boolean inList;

  /** Words escaped so that they appear on the page as typed, on one line. */
  static String plain(String words) {
    String line =
        BLANKS
            .matcher(words.strip())
            .replaceAll(run -> BREAK.matcher(run.group()).find() ? " / " : run.group())
            .replace('\t', ' ');
    String visible = INVISIBLE.matcher(line).replaceAll("");
    String escaped = SPECIAL.matcher(visible).replaceAll("\\\\$0");
    escaped = BLOCK.matcher(escaped).replaceAll("\\\\$1");
    return NUMBERED.matcher(escaped).replaceAll("$1\\\\$2");
  }

  @Override
  public Markdown title(String words) {
    out.append("# ").append(plain(words)).append('\n');
    inList = false;
    return this;
  }

  @Override
  public Markdown heading(String words) {
    out.append("\n## ").append(plain(words)).append('\n');
    inList = false;
    return this;
  }

  @Override
  public Markdown paragraph(String words) {
    return block(plain(words));
  }

  @Override
  public Markdown paragraph(String strong, String words) {
    return block("**" + plain(strong) + "**: " + plain(words));
  }

  private Markdown block(String text) {
    out.append('\n').append(text).append('\n');
    inList = false;
    return this;
  }

  @Override
  public Markdown item(String words) {
    return line("- ", words);
  }

  @Override
  public Markdown item(int number, String words) {
    return line(number + ". ", words);
  }

  @Override
  public Markdown inner(String words) {
    return line("    - ", words);
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
