package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A spreadsheet program of others, where one is on the PATH. */
record SpreadsheetProgram(Path folder) {

  static final String NAME = "soffice";

  static boolean isOnPath() {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(place -> Files.isExecutable(Path.of(place, NAME)));
  }

  /** Returns the workbook with every formula worked out afresh. */
  Path recalculated(Path workbook) throws IOException, InterruptedException {
    Path stripped = folder.resolve("stripped-" + workbook.getFileName());
    strip(workbook, stripped);
    return convert(stripped, "xlsx");
  }

  /** The program trusts stored values, so those of formulas are taken out. */
  private static void strip(Path from, Path to) throws IOException {
    try (ZipFile in = new ZipFile(from.toFile());
        OutputStream file = Files.newOutputStream(to);
        ZipOutputStream out = new ZipOutputStream(file)) {
      for (ZipEntry entry : Collections.list(in.entries())) {
        out.putNextEntry(new ZipEntry(entry.getName()));
        byte[] bytes = in.getInputStream(entry).readAllBytes();
        if (entry.getName().startsWith("xl/worksheets/")) {
          String xml = new String(bytes, StandardCharsets.UTF_8);
          bytes = xml.replaceAll("</f><v>[^<]*</v>", "</f>").getBytes(StandardCharsets.UTF_8);
        }
        out.write(bytes);
        out.closeEntry();
      }
    }
  }

  Path convert(Path from, String to) throws IOException, InterruptedException {
    Path out = Files.createDirectories(folder.resolve("converted"));
    List<String> command =
        List.of(
            NAME,
            "-env:UserInstallation=" + folder.resolve("profile").toUri(),
            "--headless",
            "--convert-to",
            to,
            "--outdir",
            out.toString(),
            from.toString());
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log.txt").toFile())
            .start();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), "the program hangs");
    String name = from.getFileName().toString().replaceAll("\\.xlsx$", "." + to);
    assertTrue(Files.exists(out.resolve(name)), Files.readString(folder.resolve("log.txt")));
    return out.resolve(name);
  }

  static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
