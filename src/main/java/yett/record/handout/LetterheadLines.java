package yett.record.handout;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import yett.knowledge.Letterhead;
import yett.paper.Markup;
import yett.paper.Picture;

/** Writes the letterhead of the firm; nothing if the firm has given none. */
record LetterheadLines(Letterhead letterhead, Optional<Picture> logo) {

  void write(Markup page) {
    if (letterhead.name().isEmpty() && logo.isEmpty()) {
      return;
    }
    page.open("table", "class", "head", "role", "presentation").open("tr").open("td");
    page.leaf("div", letterhead.name(), "class", "firm");
    letterhead.address().forEach(line -> page.leaf("div", line));
    String reach =
        Stream.of(letterhead.telephone(), letterhead.mail())
            .filter(s -> !s.isEmpty())
            .collect(Collectors.joining(" · "));
    if (!reach.isEmpty()) {
      page.leaf("div", reach);
    }
    page.close();
    page.open("td", "class", "sign");
    logo.ifPresent(
        picture ->
            page.empty("img", "src", picture.address(), "alt", "Logo of " + letterhead.name()));
    page.close().close().close();
  }
}
