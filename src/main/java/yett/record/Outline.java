package yett.record;

import java.util.Collection;

/**
 * A text of headings, paragraphs and lists, whatever it is written in. All words come in as they
 * are said, whoever wrote them (a card, an add-on, a caller), and are made plain text by who takes
 * them: no mark gets onto a page with them.
 */
public interface Outline {
  Outline title(String words);

  Outline heading(String words);

  Outline paragraph(String words);

  /** A paragraph that begins with a word that stands out. */
  Outline paragraph(String strong, String words);

  Outline item(String words);

  /** An item of a numbered list. */
  Outline item(int number, String words);

  /** An item inside the last one. */
  Outline inner(String words);

  default Outline items(Collection<String> all) {
    all.forEach(this::item);
    return this;
  }

  /** A heading with its items; nothing if there are none. */
  default Outline list(String words, Collection<String> all) {
    return all.isEmpty() ? this : heading(words).items(all);
  }
}
