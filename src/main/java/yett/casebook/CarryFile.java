package yett.casebook;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.CharacterCodingException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.json.JsonMapper;
import yett.files.BoundedFile;
import yett.files.WholeFile;

/**
 * A file with cases and sites to be carried from one casebook to another: JSON Lines as described
 * in shared/casebook-line.schema.json.
 */
public final class CarryFile {
  /** In bytes; enough for about a hundred thousand cases. */
  private static final long LARGEST = 1L << 30;

  /** In characters: a case with a page in every event; far more than anybody types. */
  private static final int LONGEST = 32 << 20;

  /** In the first format, a gate was identified only by the letters of its name. */
  static final int FORMAT = 2;

  private static final int OLDEST = 1;

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION) // a line may hold names
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .changeDefaultPropertyInclusion(
              i ->
                  i.withValueInclusion(
                      com.fasterxml.jackson.annotation.JsonInclude.Include.NON_NULL))
          .build();

  private CarryFile() {}

  private record Head(String kind, int format, Instant written, int cases, int sites) {}

  private record Kind(String kind) {}

  private record SiteLine(String kind, String id, List<Revision> revisions) {}

  private record Revision(String name, String body, Instant at) {}

  private record CaseLine(
      String kind,
      String uid,
      String id,
      String site,
      Instant opened,
      CaseStatus state,
      String title,
      String cause,
      List<NewEvent> events,
      List<PersonLine> people) {}

  private record PersonLine(Person.Part part, String name, String phone) {}

  /** Receives the content of a file in its order. */
  public interface Reader {
    void head(int cases, int sites);

    void site(CarriedSite site);

    /**
     * @throws IllegalArgumentException if the case cannot be imported; the message is shown with
     *     the number of the line
     */
    void carried(CarriedCase carried);
  }

  public static void writeHead(Writer to, Instant at, int cases, int sites) throws IOException {
    line(to, new Head("casebook", FORMAT, at, cases, sites));
  }

  public static void write(Writer to, CarriedSite site) throws IOException {
    line(
        to,
        new SiteLine(
            "site",
            site.id(),
            site.revisions().stream().map(r -> new Revision(r.name(), r.body(), r.at())).toList()));
  }

  public static void write(Writer to, CarriedCase carried) throws IOException {
    line(
        to,
        new CaseLine(
            "case",
            carried.uid(),
            carried.id().toString(),
            carried.siteId(),
            carried.opened(),
            carried.summary().state(),
            carried.summary().title(),
            carried.summary().cause(),
            carried.events(),
            carried.people().isEmpty()
                ? null
                : carried.people().stream()
                    .map(p -> new PersonLine(p.part(), p.name(), p.phone()))
                    .toList()));
  }

  private static void line(Writer to, Object line) throws IOException {
    to.write(JSON.writeValueAsString(line));
    to.write('\n');
  }

  /**
   * Reads a file line by line.
   *
   * @throws CasebookException if it is not such a file, or is damaged; the message names the line
   */
  public static void read(Path file, Reader reader) {
    int number = 0;
    var format = new Format();
    try (var lines = BoundedFile.lines(file, LARGEST, LONGEST)) {
      number = 1;
      for (String text = lines.next(); text != null; text = lines.next()) {
        if (!text.isBlank()) {
          read(text, number == 1, format, reader);
        }
        number++;
      }
    } catch (NoSuchFileException e) {
      throw new CasebookException(file + ": there is no such file.", e);
    } catch (FileNotFoundException e) {
      throw new CasebookException(
          file
              + ": this is a directory, a device or a pipe. Cases are taken in from a file: write"
              + " them to one first.",
          e);
    } catch (BoundedFile.TooLarge e) {
      throw new CasebookException(
          file
              + ": this file is larger than any that is taken in (1 GiB). Have the cases written to"
              + " several files.",
          e);
    } catch (BoundedFile.LineTooLong e) {
      throw new CasebookException(
          file + ", line " + number + ": this line is longer than any that cases export writes.",
          e);
    } catch (CharacterCodingException e) {
      throw new CasebookException(file + ": this is not a file of cases (not UTF-8).", e);
    } catch (IOException e) {
      throw new CasebookException(file + ": it cannot be read (" + Troubles.told(e) + ").", e);
    } catch (JacksonException | IllegalArgumentException | NullPointerException e) {
      throw new CasebookException(file + ", line " + number + ": " + words(e), null);
    }
    if (number == 1) {
      throw new CasebookException(file + ": the file is empty.");
    }
  }

  /** The format of the file, which is known after the first line. */
  private static final class Format {
    private int number;

    boolean hasOldSites() {
      return number == OLDEST;
    }
  }

  private static void read(String text, boolean first, Format format, Reader reader) {
    String kind = Optional.ofNullable(JSON.readValue(text, Kind.class).kind()).orElse("");
    if (first != kind.equals("casebook")) {
      throw new IllegalArgumentException(
          first
              ? "this is not a file of cases, as cases export writes them."
              : "a second beginning of a file; import each file by itself.");
    }
    switch (kind) {
      case "casebook" -> {
        Head head = JSON.readValue(text, Head.class);
        format.number = head.format();
        head(head, reader);
      }
      case "site" -> sites(JSON.readValue(text, SiteLine.class), format).forEach(reader::site);
      case "case" -> reader.carried(carried(JSON.readValue(text, CaseLine.class), format));
      default ->
          throw new IllegalArgumentException(
              Shown.quoted(kind) + " is nothing this program knows: casebook, site or case.");
    }
  }

  private static void head(Head head, Reader reader) {
    if (head.format() < OLDEST || head.format() > FORMAT) {
      throw new IllegalArgumentException(
          "the file is of format "
              + head.format()
              + ", this program reads "
              + OLDEST
              + " to "
              + FORMAT
              + ". Install the newer program.");
    }
    reader.head(head.cases(), head.sites());
  }

  private static List<CarriedSite> sites(SiteLine line, Format format) {
    Map<String, List<SiteRecord>> byName = new LinkedHashMap<>();
    for (Revision r : line.revisions()) {
      String id = format.hasOldSites() ? r.name() : line.id();
      byName
          .computeIfAbsent(id, k -> new ArrayList<>())
          .add(new SiteRecord(id, r.name(), r.body(), r.at()));
    }
    return byName.entrySet().stream().map(e -> new CarriedSite(e.getKey(), e.getValue())).toList();
  }

  private static CarriedCase carried(CaseLine line, Format format) {
    CaseId id =
        CaseId.parse(line.id())
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        Shown.quoted(line.id()) + " is not a case number."));
    var told = line.events().stream().map(e -> new SiteName.EventText(e.type(), e.body()));
    String site = format.hasOldSites() ? SiteName.told(told).orElse(line.site()) : line.site();
    return new CarriedCase(
        line.uid(),
        id,
        site,
        line.opened(),
        new Summary(line.state(), line.title(), line.cause() == null ? "" : line.cause()),
        line.events(),
        line.people() == null
            ? List.of()
            : line.people().stream()
                .map(p -> new Person(p.part(), text(p.name()), text(p.phone())))
                .toList());
  }

  private static String text(String value) {
    return value == null ? "" : value;
  }

  private static String words(RuntimeException e) {
    if (e instanceof JacksonException broken) {
      // The parser's message quotes the content and refers to Java classes.
      int column = broken.getLocation() == null ? 0 : broken.getLocation().getColumnNr();
      return "this line is damaged, or cut short"
          + (column > 0 ? " (at character " + column + ")." : ".");
    }
    return e instanceof NullPointerException
        ? "something is missing in this line; shared/casebook-line.schema.json says what belongs"
            + " there."
        : e.getMessage();
  }

  /**
   * Writes a whole export or none. Only its owner can read the file, because it may contain
   * people's data.
   */
  public static void writeTo(Path file, WholeFile.Content content) {
    try {
      WholeFile.createOwn(file, content);
    } catch (IOException | UncheckedIOException e) {
      throw new CasebookException(
          file + ": it cannot be written (" + Troubles.told(e) + "). Name another file.", e);
    }
  }
}
