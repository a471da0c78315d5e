package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** A spreadsheet program of others, where one is on the PATH. */
public record SpreadsheetProgram(Path folder) {

  static final String NAME = "soffice";

  public static boolean isOnPath() {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .anyMatch(place -> Files.isExecutable(Path.of(place, NAME)));
  }

  /** Returns the workbook with every formula worked out afresh. */
  Path recalculated(Path workbook) throws IOException, InterruptedException {
    return recalculated(List.of(workbook)).get(0);
  }

  /** Returns the same of several workbooks, in one run of the program. */
  List<Path> recalculated(List<Path> workbooks) throws IOException, InterruptedException {
    List<Path> stripped = new ArrayList<>();
    for (Path workbook : workbooks) {
      stripped.add(stripped(workbook));
    }
    return convert(stripped, "xlsx");
  }

  /** Returns the workbook without the stored values of its formulas, which the program trusts. */
  public Path stripped(Path from) throws IOException {
    Path to = folder.resolve("stripped-" + from.getFileName());
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
    return to;
  }

  /** Returns the command that writes a workbook anew, in another format or the same. */
  public List<String> conversion(Path from, String to) {
    return conversion(List.of(from), to);
  }

  private List<String> conversion(List<Path> files, String to) {
    List<String> command =
        new ArrayList<>(
            List.of(
                NAME,
                "-env:UserInstallation=" + folder.resolve("profile").toAbsolutePath().toUri(),
                "--headless",
                "--convert-to",
                to,
                "--outdir",
                converted().toString()));
    files.forEach(file -> command.add(file.toString()));
    return command;
  }

  private Path converted() {
    return folder.resolve("converted");
  }

  Path convert(Path from, String to) throws IOException, InterruptedException {
    return convert(List.of(from), to).get(0);
  }

  private List<Path> convert(List<Path> files, String to) throws IOException, InterruptedException {
    Path out = Files.createDirectories(converted());
    Process process =
        new ProcessBuilder(conversion(files, to))
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log.txt").toFile())
            .start();
    assertTrue(process.waitFor(15, TimeUnit.MINUTES), "the program hangs");
    List<Path> converted = new ArrayList<>();
    for (Path file : files) {
      String name = file.getFileName().toString().replaceAll("\\.xlsx$", "." + to);
      assertTrue(Files.exists(out.resolve(name)), Files.readString(folder.resolve("log.txt")));
      converted.add(out.resolve(name));
    }
    return converted;
  }

  static XSSFWorkbook open(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return new XSSFWorkbook(in);
    }
  }
}
