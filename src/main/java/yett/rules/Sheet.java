package yett.rules;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes cells as a workbook (XLSX) with one sheet, and reads them back. Figures are stored as
 * numbers.
 */
public final class Sheet {
  private static final int DIGITS = 9;

  private Sheet() {}

  /** A workbook with these cells; the first line and column stay in view when scrolling. */
  public static byte[] workbook(String name, List<List<String>> rows) {
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream()) {
      var sheet = workbook.createSheet(name);
      sheet.createFreezePane(1, 1);
      for (int r = 0; r < rows.size(); r++) {
        Row row = sheet.createRow(r);
        for (int c = 0; c < rows.get(r).size(); c++) {
          put(row, c, rows.get(r).get(c));
        }
      }
      workbook.write(bytes);
      return bytes.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void put(Row row, int column, String words) {
    if (words.matches("-?\\d{1,9}(\\.\\d{1,12})?")) {
      row.createCell(column).setCellValue(Double.parseDouble(words));
    } else if (!words.isEmpty()) {
      row.createCell(column).setCellValue(words);
    }
  }

  /**
   * The cells of the first sheet.
   *
   * @throws IOException if it is no workbook, or a hostile one
   */
  public static List<List<String>> rows(byte[] workbook) throws IOException {
    TableFile.bound(workbook);
    List<List<String>> rows = new ArrayList<>();
    DataFormatter words = new DataFormatter();
    try (Workbook book = new XSSFWorkbook(new ByteArrayInputStream(workbook))) {
      var sheet = book.getSheetAt(0);
      for (int r = 0; r <= sheet.getLastRowNum(); r++) {
        List<String> cells = new ArrayList<>();
        Row row = sheet.getRow(r);
        for (int c = 0; row != null && c < row.getLastCellNum(); c++) {
          cells.add(text(row.getCell(c), words));
        }
        rows.add(cells);
      }
    } catch (RuntimeException e) {
      throw new IOException("no workbook", e); // whatever the reader says of a broken one
    }
    return rows;
  }

  private static String text(Cell cell, DataFormatter words) {
    if (cell == null) {
      return "";
    }
    return cell.getCellType() == CellType.NUMERIC
        ? BigDecimal.valueOf(cell.getNumericCellValue())
            .round(new MathContext(DIGITS))
            .stripTrailingZeros()
            .toPlainString()
        : words.formatCellValue(cell);
  }
}
