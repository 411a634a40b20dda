package yett.record;

import java.util.Collection;

/**
 * A text of headings, paragraphs and lists in any format. All words, whoever wrote them (a card, an
 * add-on, a caller), are turned into plain text by the implementation, so that no markup gets onto
 * a page with them.
 */
public interface Outline {
  Outline title(String words);

  Outline heading(String words);

  Outline paragraph(String words);

  /** A paragraph that begins with an emphasised word. */
  Outline paragraph(String strong, String words);

  Outline item(String words);

  /** An item of a numbered list. */
  Outline item(int number, String words);

  /** An item nested inside the last one. */
  Outline inner(String words);

  default Outline items(Collection<String> all) {
    all.forEach(this::item);
    return this;
  }

  /** A heading with its items; writes nothing if there are none. */
  default Outline list(String words, Collection<String> all) {
    return all.isEmpty() ? this : heading(words).items(all);
  }
}
