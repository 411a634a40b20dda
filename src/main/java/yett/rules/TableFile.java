package yett.rules;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipInputStream;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.drools.decisiontable.parser.csv.CsvLineParser;
import org.drools.decisiontable.parser.csv.CsvParser;
import org.drools.decisiontable.parser.xls.ExcelParser;

/**
 * Reads the cells of a table, CSV or XLSX. A workbook may be hostile (a decompression bomb), so its
 * unpacked size is limited; the reader resolves no entities and fetches nothing.
 */
final class TableFile {
  /** Largest unpacked part of a workbook (bytes). */
  private static final long LARGEST_PART = 8L << 20;

  /** Largest unpacked workbook (bytes); the reader takes ten times as much memory. */
  private static final long LARGEST = 16L << 20;

  private static final int MOST_PARTS = 200;
  private static final double LEAST_RATIO = 0.01;

  private TableFile() {}

  /**
   * Reads the sheets of a table.
   *
   * @param content as the rule base holds it: text, or the bytes of a workbook as one character
   *     each
   * @throws IOException if it is not such a table
   */
  static List<TableSheet> read(String name, String content) throws IOException {
    return name.endsWith(".xlsx")
        ? workbook(content.getBytes(StandardCharsets.ISO_8859_1))
        : List.of(text(content.getBytes(StandardCharsets.UTF_8)));
  }

  private static TableSheet text(byte[] bytes) {
    TableSheet sheet = new TableSheet("");
    new CsvParser(sheet, new CsvLineParser()).parseFile(new ByteArrayInputStream(bytes));
    return sheet;
  }

  /**
   * Checks the unpacked size of a workbook.
   *
   * @throws IOException if it is too large
   */
  static void bound(byte[] bytes) throws IOException {
    ZipSecureFile.setMaxEntrySize(LARGEST_PART);
    ZipSecureFile.setMaxFileCount(MOST_PARTS);
    ZipSecureFile.setMinInflateRatio(LEAST_RATIO);
    byte[] piece = new byte[1 << 16];
    long all = 0;
    try (ZipInputStream parts = new ZipInputStream(new ByteArrayInputStream(bytes))) {
      while (parts.getNextEntry() != null) {
        for (int read = parts.read(piece); read >= 0; read = parts.read(piece)) {
          all += read;
          if (all > LARGEST) {
            throw new IOException("a workbook of more than " + (LARGEST >> 20) + " MiB");
          }
        }
      }
    }
  }

  private static List<TableSheet> workbook(byte[] bytes) throws IOException {
    bound(bytes);
    List<TableSheet> sheets = new ArrayList<>();
    try (Workbook workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
      for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
        String name = workbook.getSheetName(i);
        TableSheet sheet = new TableSheet(name);
        new ExcelParser(Map.of(name, List.of(sheet))).parseWorkbook(workbook);
        sheets.add(sheet);
      }
    } catch (RuntimeException e) {
      throw new IOException(
          "no workbook", e); // whatever the reader says of a broken or hostile one
    }
    return sheets;
  }
}
