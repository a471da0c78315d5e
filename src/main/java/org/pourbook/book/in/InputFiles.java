package org.pourbook.book.in;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Locale;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.pourbook.desk.Batch.InputFile;

/** Opens inputs by what they are, not by what they are called, and never writes to them. */
final class InputFiles {

  private static final String KINDS = "an .xlsx, .xlsm or .xls workbook, or a folder of CSV files";

  private InputFiles() {}

  /**
   * Returns the sheets chosen of a workbook, a folder of CSV files, or one CSV file.
   *
   * @throws UnreadableFile if it is missing or nothing that can be read
   */
  static RawBook read(Path path, RawBook.Choice choice) throws UnreadableFile {
    if (Files.notExists(path)) {
      throw UnreadableFile.missing(path);
    }
    if (Files.isDirectory(path)) {
      return CsvFiles.folder(path, choice);
    }
    try {
      if (Files.size(path) == 0) {
        throw new UnreadableFile(path + " is empty");
      }
      return switch (FileMagic.valueOf(path.toFile())) {
        case OOXML -> XlsxBook.read(path, choice);
        case OLE2 -> XlsBook.read(path, choice);
        case BIFF2, BIFF3, BIFF4 ->
            throw new UnreadableFile(path + " is from a very old Excel: save it as .xlsx");
        default -> other(path, choice);
      };
    } catch (UnreadableFile e) {
      throw e;
    } catch (IOException e) {
      throw new UnreadableFile(path + " cannot be read", e);
    }
  }

  private static RawBook other(Path path, RawBook.Choice choice) throws UnreadableFile {
    if (isCsv(path)) {
      return CsvFiles.single(path, choice);
    }
    throw new UnreadableFile(path + " is not a workbook: expected " + KINDS);
  }

  static boolean isCsv(Path path) {
    return name(path).toLowerCase(Locale.ROOT).endsWith(".csv");
  }

  static String name(Path path) {
    Path name = path.getFileName();
    return name == null ? path.toString() : name.toString();
  }

  /** Returns the file's name with the SHA-256 of its bytes. */
  static InputFile hashed(Path path) throws IOException {
    MessageDigest digest;
    try {
      digest = MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
    try (InputStream in = Files.newInputStream(path)) {
      byte[] buffer = new byte[1 << 16];
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        digest.update(buffer, 0, n);
      }
    }
    return new InputFile(name(path), HexFormat.of().formatHex(digest.digest()));
  }
}
