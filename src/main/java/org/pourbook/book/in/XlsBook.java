package org.pourbook.book.in;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.EncryptedDocumentException;
import org.apache.poi.hssf.OldExcelFormatException;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.crypt.Decryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.jspecify.annotations.Nullable;
import org.pourbook.book.in.CellValues.CellStyle;
import org.pourbook.job.GivenSheet.GivenCell;

/** The old binary workbook, {@code .xls}, opened for reading only. */
final class XlsBook {

  private XlsBook() {}

  /** Returns the sheets chosen. */
  static RawBook read(Path path, RawBook.Choice choice) throws UnreadableFile {
    try (POIFSFileSystem files = new POIFSFileSystem(path.toFile(), true)) {
      if (files.getRoot().hasEntryCaseInsensitive(Decryptor.DEFAULT_POIFS_ENTRY)) {
        throw locked(path, null);
      }
      try (HSSFWorkbook book = new HSSFWorkbook(files)) {
        return read(path, book, choice);
      }
    } catch (UnreadableFile e) {
      throw e;
    } catch (EncryptedDocumentException e) {
      throw locked(path, e);
    } catch (OldExcelFormatException e) {
      throw new UnreadableFile(path + " is from a very old Excel: save it as .xlsx", e);
    } catch (IOException | RuntimeException e) {
      // Damaged bytes come out of POI as any of a dozen unchecked exceptions.
      throw new UnreadableFile(path + " is damaged or no .xls workbook: save it as .xlsx", e);
    }
  }

  private static UnreadableFile locked(Path path, @Nullable Throwable cause) {
    String sentence = path + " is protected by a password: remove it and save the workbook again";
    return cause == null ? new UnreadableFile(sentence) : new UnreadableFile(sentence, cause);
  }

  private static RawBook read(Path path, HSSFWorkbook book, RawBook.Choice choice)
      throws IOException {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < book.getNumberOfSheets(); i++) {
      names.add(book.getSheetName(i));
    }
    boolean date1904 = book.getInternalWorkbook().isUsing1904DateWindowing();
    List<RawSheet> sheets = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      if (choice.reads(names.get(i), names)) {
        sheets.add(new RawSheet(names.get(i), names.get(i), rows(book.getSheetAt(i), date1904)));
      }
    }
    return new RawBook(names, sheets, List.of(InputFiles.hashed(path)));
  }

  private static List<RawRow> rows(Sheet sheet, boolean date1904) {
    List<RawRow> rows = new ArrayList<>();
    for (Row row : sheet) {
      List<GivenCell> cells = new ArrayList<>();
      for (Cell cell : row) {
        while (cells.size() < cell.getColumnIndex()) {
          cells.add(RawRow.BLANK);
        }
        cells.add(value(cell, date1904));
      }
      RawRow raw = new RawRow(row.getRowNum(), cells);
      if (!raw.isBlank()) {
        rows.add(raw);
      }
    }
    return rows;
  }

  private static GivenCell value(Cell cell, boolean date1904) {
    CellType type =
        cell.getCellType() == CellType.FORMULA
            ? cell.getCachedFormulaResultType()
            : cell.getCellType();
    return switch (type) {
      case NUMERIC ->
          CellValues.number(
              cell.getNumericCellValue(),
              CellStyle.of(
                  cell.getCellStyle().getDataFormat(), cell.getCellStyle().getDataFormatString()),
              date1904);
      case STRING -> CellValues.text(cell.getRichStringCellValue().getString());
      case BOOLEAN -> new GivenCell.YesNo(cell.getBooleanCellValue());
      case ERROR -> new GivenCell.Error(FormulaError.forInt(cell.getErrorCellValue()).getString());
      case BLANK, FORMULA, _NONE -> RawRow.BLANK;
    };
  }
}
