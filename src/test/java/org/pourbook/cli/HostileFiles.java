package org.pourbook.cli;

import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/** Files that are broken or made to do harm, each with the way in which it is to be met. */
final class HostileFiles {

  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE =
      "http://schemas.openxmlformats.org/package/2006/relationships";
  private static final String BOOK_TYPE =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml";
  private static final String TYPES = "[Content_Types].xml";
  private static final String RELS = "_rels/.rels";
  private static final String BOOK = "xl/workbook.xml";
  private static final String BOOK_RELS = "xl/_rels/workbook.xml.rels";
  private static final String JOBS = "xl/worksheets/sheet1.xml";
  private static final String SECTIONS = "xl/worksheets/sheet2.xml";
  private static final String STRINGS = "xl/sharedStrings.xml";
  private static final String STYLES = "xl/styles.xml";
  private static final String HEADER = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>";

  private static final int MANY = 1_000_000;

  private final Path folder;
  private final List<Hostile> made = new ArrayList<>();

  /**
   * A file with what is to come of it.
   *
   * @param status the exit status of {@code estimate}
   * @param sentence a part of what it must say
   */
  record Hostile(Path path, int status, String sentence) {}

  /** Writes a part or a file. */
  @FunctionalInterface
  private interface Bytes {
    void writeTo(OutputStream out) throws IOException;
  }

  private HostileFiles(Path folder) {
    this.folder = folder;
  }

  /** Returns the files, made in an empty folder. */
  static List<Hostile> in(Path folder) throws IOException {
    HostileFiles files = new HostileFiles(folder);
    files.sound();
    files.archives();
    files.markup();
    files.cells();
    files.references();
    files.kinds();
    files.csv();
    return files.made;
  }

  private static Bytes text(String text) {
    return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
  }

  private static Bytes repeated(String before, String text, int times, String after) {
    byte[] bytes = text.repeat(100).getBytes(StandardCharsets.UTF_8);
    return out -> {
      text(before).writeTo(out);
      for (int i = 0; i < times / 100; i++) {
        out.write(bytes);
      }
      text(after).writeTo(out);
    };
  }

  private static String sheet(String rows) {
    return open(rows) + "</sheetData>";
  }

  private static String open(String rows) {
    return HEADER + "<worksheet xmlns=\"" + MAIN + "\"><sheetData>" + rows;
  }

  private static String row(int index, String... texts) {
    StringBuilder row = new StringBuilder("<row r=\"" + index + "\">");
    for (String text : texts) {
      row.append("<c t=\"inlineStr\"><is><t>").append(text).append("</t></is></c>");
    }
    return row + "</row>";
  }

  private static String relation(String id, String kind, String target) {
    return "<Relationship Id=\""
        + id
        + "\" Type=\""
        + OFFICE
        + "/"
        + kind
        + "\" Target=\""
        + target
        + "\"/>";
  }

  private static String relations(String... relations) {
    return HEADER
        + "<Relationships xmlns=\""
        + PACKAGE
        + "\">"
        + String.join("", relations)
        + "</Relationships>";
  }

  private static String types(String bookType) {
    return HEADER
        + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
        + "<Default Extension=\"rels\""
        + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
        + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>"
        + "<Override PartName=\"/xl/workbook.xml\" ContentType=\""
        + bookType
        + "\"/></Types>";
  }

  private static final String ROWS_OF_JOBS = row(1, "Job", "Mix") + row(2, "A", "3000 psi");
  private static final String ROWS_OF_SECTIONS =
      row(1, "Job", "Section", "Length", "Width", "Thickness (in)")
          + row(2, "A", "F1", "25'", "27'", "6");
  private static final String END = "</worksheet>";

  private static Map<String, Bytes> parts() {
    Map<String, Bytes> parts = new LinkedHashMap<>();
    parts.put(TYPES, text(types(BOOK_TYPE)));
    parts.put(RELS, text(relations(relation("r1", "officeDocument", BOOK))));
    parts.put(
        BOOK,
        text(
            HEADER
                + "<workbook xmlns=\""
                + MAIN
                + "\" xmlns:r=\""
                + OFFICE
                + "\"><sheets><sheet name=\"Jobs\" sheetId=\"1\" r:id=\"r1\"/>"
                + "<sheet name=\"Sections\" sheetId=\"2\" r:id=\"r2\"/></sheets></workbook>"));
    parts.put(
        BOOK_RELS,
        text(
            relations(
                relation("r1", "worksheet", "worksheets/sheet1.xml"),
                relation("r2", "worksheet", "worksheets/sheet2.xml"),
                relation("r3", "sharedStrings", "sharedStrings.xml"),
                relation("r4", "styles", "styles.xml"))));
    parts.put(JOBS, text(sheet(ROWS_OF_JOBS) + END));
    parts.put(SECTIONS, text(sheet(ROWS_OF_SECTIONS) + END));
    parts.put(STRINGS, text(HEADER + "<sst xmlns=\"" + MAIN + "\"><si><t>A</t></si></sst>"));
    parts.put(STYLES, text(styles("<xf numFmtId=\"0\"/>")));
    return parts;
  }

  private static String styles(String styles) {
    return HEADER
        + "<styleSheet xmlns=\""
        + MAIN
        + "\"><cellXfs>"
        + styles
        + "</cellXfs></styleSheet>";
  }

  private Path file(String name, Bytes bytes) throws IOException {
    Path path = folder.resolve(name);
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(path))) {
      bytes.writeTo(out);
    }
    return path;
  }

  private static Bytes zip(Map<String, Bytes> parts) {
    return out -> {
      ZipOutputStream zip = new ZipOutputStream(out);
      for (Map.Entry<String, Bytes> part : parts.entrySet()) {
        zip.putNextEntry(new ZipEntry(part.getKey()));
        part.getValue().writeTo(zip);
        zip.closeEntry();
      }
      zip.finish();
    };
  }

  private void add(String name, Bytes bytes, int status, String sentence) throws IOException {
    made.add(new Hostile(file(name, bytes), status, sentence));
  }

  private void refused(String name, Bytes bytes, String sentence) throws IOException {
    add(name, bytes, ExitStatus.NOTHING, sentence);
  }

  /** A sound workbook with one part of its own. */
  private static Bytes with(String part, Bytes bytes) {
    Map<String, Bytes> parts = parts();
    parts.put(part, bytes);
    return zip(parts);
  }

  private static Bytes with(String part, String words) {
    return with(part, text(words));
  }

  private static Bytes without(String part) {
    Map<String, Bytes> parts = parts();
    parts.remove(part);
    return zip(parts);
  }

  /** So that what follows is refused for its harm and not for what it is made from. */
  private void sound() throws IOException {
    add("sound.xlsx", zip(parts()), ExitStatus.DONE, "");
    add(
        "sound.xlsm",
        with(TYPES, types("application/vnd.ms-excel.sheet.macroEnabled.main+xml")),
        ExitStatus.DONE,
        "");
  }

  private static byte[] whole() throws IOException {
    var out = new ByteArrayOutputStream();
    zip(parts()).writeTo(out);
    return out.toByteArray();
  }

  private static Bytes raw(byte[] bytes) {
    return out -> out.write(bytes);
  }

  private static byte[] replaced(byte[] bytes, String from, String to) {
    String raw = new String(bytes, StandardCharsets.ISO_8859_1).replace(from, to);
    return raw.getBytes(StandardCharsets.ISO_8859_1);
  }

  private void archives() throws IOException {
    String bomb = "unpacks to far more";
    refused(
        "bomb-in-sheet.xlsx",
        with(JOBS, repeated(open(ROWS_OF_JOBS), "<row/>", 20 * MANY, "</sheetData>" + END)),
        bomb);
    refused(
        "bomb-in-strings.xlsx",
        with(
            STRINGS,
            repeated("<sst xmlns=\"" + MAIN + "\"><si><t>", "A", 100 * MANY, "</t></si></sst>")),
        bomb);
    refused(
        "bomb-in-types.xlsx",
        with(
            TYPES, repeated(types(BOOK_TYPE).replace("</Types>", ""), " ", 100 * MANY, "</Types>")),
        bomb);
    refused(
        "bomb-in-relations.xlsx",
        with(
            RELS,
            repeated(
                relations().replace("</Relationships>", ""), " ", 100 * MANY, "</Relationships>")),
        "no workbook");
    Map<String, Bytes> many = parts();
    for (int i = 0; i < 5000; i++) {
      many.put("xl/media/image" + i + ".xml", text(""));
    }
    refused("many-entries.xlsx", zip(many), bomb);
    byte[] whole = whole();
    refused("truncated.xlsx", raw(Arrays.copyOf(whole, whole.length / 2)), "is cut off");
    Map<String, Bytes> twice = parts();
    twice.put("xl/worksheets/sheet9.xml", text(sheet("") + END));
    var out = new ByteArrayOutputStream();
    zip(twice).writeTo(out);
    refused(
        "duplicate-entries.xlsx",
        raw(replaced(out.toByteArray(), "xl/worksheets/sheet9.xml", JOBS)),
        "is damaged");
    Map<String, Bytes> climbing = parts();
    climbing.put("../../climbed.xml", text("<a/>"));
    add("climbing-names.xlsx", zip(climbing), ExitStatus.DONE, "");
    refused("plain.zip.xlsx", zip(Map.of("a.txt", text("a"))), "");
    refused("empty.xlsx", text(""), "is empty");
    byte[] noise = new byte[100_000];
    new SplittableRandom(7).nextBytes(noise);
    refused("noise.xlsx", raw(noise), "is not a workbook");
    byte[] noisyZip = noise.clone();
    System.arraycopy(new byte[] {'P', 'K', 3, 4}, 0, noisyZip, 0, 4);
    refused("noise-like-a-zip.xlsx", raw(noisyZip), "is damaged");
    byte[] noisyOld = noise.clone();
    byte[] ole = {
      (byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0, (byte) 0xA1, (byte) 0xB1, 0x1A, (byte) 0xE1
    };
    System.arraycopy(ole, 0, noisyOld, 0, 8);
    refused("noise-like-an-old-one.xls", raw(noisyOld), "is damaged");
  }

  private void markup() throws IOException {
    StringBuilder entities = new StringBuilder("<!DOCTYPE x [<!ENTITY a \"ha\">");
    for (char c = 'b'; c < 'k'; c++) {
      String ten = ("&" + (char) (c - 1) + ";").repeat(10);
      entities.append("<!ENTITY ").append(c).append(" \"").append(ten).append("\">");
    }
    String laughs = entities.toString();
    String external = "<!DOCTYPE x [<!ENTITY j SYSTEM \"file:///etc/hostname\">";
    for (String part : List.of(TYPES, RELS, BOOK, BOOK_RELS, JOBS, STRINGS, STYLES)) {
      String name = part.replaceAll("[^A-Za-z0-9]+", "-");
      boolean first = part.equals(RELS); // without it nothing says that this is a workbook
      String damaged = first ? "no workbook" : "is damaged";
      String doctype = first ? "no workbook" : "declares a document type";
      refused("laughs-" + name + ".xlsx", with(part, laughs + "]><x>&j;</x>"), doctype);
      refused("external-" + name + ".xlsx", with(part, external + "]><x>&j;</x>"), doctype);
      refused("no-xml-" + name + ".xlsx", with(part, "<a><b></a>"), damaged);
      refused(
          "wrong-utf8-" + name + ".xlsx",
          with(
              part,
              raw(new byte[] {'<', 'a', '>', (byte) 0xC3, '(', (byte) 0xFF, '<', '/', 'a', '>'})),
          damaged);
      refused(
          "deep-" + name + ".xlsx",
          with(
              part,
              out -> {
                var noise = new SplittableRandom(11);
                for (int i = 0; i < 200_000; i++) {
                  out.write(
                      ("<a b=\"" + Long.toString(noise.nextLong(), 36) + "\">")
                          .getBytes(StandardCharsets.UTF_8));
                }
              }),
          damaged);
    }
  }

  private void cells() throws IOException {
    String far = "<row r=\"1048576\"><c r=\"XFD1048576\"><v>1</v></c></row>";
    add(
        "far-cell.xlsx",
        with(JOBS, sheet(ROWS_OF_JOBS + far) + END),
        ExitStatus.DONE,
        "Jobs!A1048576");
    refused(
        "row-99999999.xlsx",
        with(JOBS, sheet(ROWS_OF_JOBS + "<row r=\"99999999\"/>") + END),
        "row 99999999");
    refused("row-none.xlsx", with(JOBS, sheet(ROWS_OF_JOBS + "<row r=\"x\"/>") + END), "row x");
    for (String bad : List.of("!!", "XFE1", "AAAA1", "A0", "a1", "A99999999", "")) {
      refused(
          "cell-" + bad + ".xlsx",
          with(JOBS, sheet("<row r=\"1\"><c r=\"" + bad + "\"><v>1</v></c></row>") + END),
          "cell " + bad);
    }
    refused(
        "long-reference.xlsx",
        with(JOBS, sheet("<row r=\"1\"><c r=\"" + noise(100_000) + "\"><v>1</v></c></row>") + END),
        "is damaged");
    refused(
        "wide-rows.xlsx",
        with(
            JOBS,
            out -> {
              text(open(ROWS_OF_JOBS)).writeTo(out);
              var noise = new SplittableRandom(5);
              for (int i = 3; i < 200_000; i++) {
                text("<row r=\""
                        + i
                        + "\"><c r=\"XFD"
                        + i
                        + "\"><v>"
                        + noise.nextLong()
                        + "</v></c></row>")
                    .writeTo(out);
              }
              text("</sheetData>" + END).writeTo(out);
            }),
        "far to the right");
    add(
        "styles.xlsx",
        with(
            STYLES,
            out -> {
              text(styles("").replace("</cellXfs></styleSheet>", "")).writeTo(out);
              for (int i = 0; i < MANY; i++) {
                text("<xf numFmtId=\"" + i * 7919L % 1_000_003 + "\"/>").writeTo(out);
              }
              text("</cellXfs></styleSheet>").writeTo(out);
            }),
        ExitStatus.DONE,
        "");
    add("merged.xlsx", merged(), ExitStatus.DONE, "");
    refused(
        "string-missing.xlsx",
        with(JOBS, sheet(ROWS_OF_JOBS + cell("s", "99", "")) + END),
        "text that is not there");
    refused(
        "string-negative.xlsx",
        with(JOBS, sheet(ROWS_OF_JOBS + cell("s", "-1", "")) + END),
        "text that is not there");
    refused(
        "string-word.xlsx",
        with(JOBS, sheet(ROWS_OF_JOBS + cell("s", "one", "")) + END),
        "text that is not there");
    refused(
        "style-missing.xlsx",
        with(JOBS, sheet(ROWS_OF_JOBS + cell("n", "1", "99")) + END),
        "style that is not there");
    add(
        "number-word.xlsx",
        with(JOBS, sheet(ROWS_OF_JOBS.replace("</row>", "") + "") + END),
        ExitStatus.NOTHING,
        "is damaged");
    add(
        "number-huge.xlsx",
        with(SECTIONS, sheet(ROWS_OF_SECTIONS.replace("25'", "9".repeat(60_000))) + END),
        ExitStatus.NOTHING,
        "Sections!C2");
    add(
        "number-exponent.xlsx",
        with(SECTIONS, sheet(ROWS_OF_SECTIONS.replace("25'", "1e999999999")) + END),
        ExitStatus.NOTHING,
        "Sections!C2");
    add(
        "count-huge.xlsx",
        with(
            SECTIONS,
            sheet(
                    row(1, "Job", "Section", "Length", "Width", "Thickness (in)", "Count")
                        + row(2, "A", "F1", "25'", "27'", "6", "2000000000"))
                + END),
        ExitStatus.NOTHING,
        "Sections!F2");
    add(
        "length-huge.xlsx",
        with(SECTIONS, sheet(ROWS_OF_SECTIONS.replace("25'", "9999999'")) + END),
        ExitStatus.NOTHING,
        "Sections!C2");
    add(
        "escapes.xlsx",
        with(
            SECTIONS, sheet(ROWS_OF_SECTIONS.replace("25'", "_x001B_[31mred_x000A__x0000_")) + END),
        ExitStatus.NOTHING,
        "Sections!C2");
  }

  private static Bytes merged() {
    return with(
        JOBS,
        out -> {
          text(sheet(ROWS_OF_JOBS) + "<mergeCells>").writeTo(out);
          for (int i = 0; i < 100_000; i++) {
            text("<mergeCell ref=\"D" + (i + 10) + ":XFD" + (i + 10) + "\"/>").writeTo(out);
          }
          text("</mergeCells>" + END).writeTo(out);
        });
  }

  private static String cell(String type, String value, String style) {
    return "<row r=\"3\"><c r=\"A3\" t=\""
        + type
        + "\""
        + (style.isEmpty() ? "" : " s=\"" + style + "\"")
        + "><v>"
        + value
        + "</v></c></row>";
  }

  private static String noise(int length) {
    var noise = new SplittableRandom(3);
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < length; i++) {
      text.append((char) ('A' + noise.nextInt(26)));
    }
    return text.toString();
  }

  private void references() throws IOException {
    refused("no-sheet.xlsx", without(JOBS), "sheet Jobs is missing");
    refused("no-strings.xlsx", without(STRINGS), "sharedStrings is missing");
    refused("no-styles.xlsx", without(STYLES), "styles is missing");
    refused("no-book.xlsx", without(BOOK), "");
    refused("no-types.xlsx", without(TYPES), "");
    refused("no-relations.xlsx", without(RELS), "");
    refused("no-book-relations.xlsx", without(BOOK_RELS), "is damaged");
    refused(
        "outside-relation.xlsx",
        with(
            BOOK_RELS,
            relations(
                relation("r1", "worksheet", "file:///etc/passwd")
                    .replace("/>", " TargetMode=\"External\"/>"),
                relation("r2", "worksheet", "worksheets/sheet2.xml"))),
        "is damaged");
    refused(
        "climbing-relation.xlsx",
        with(
            BOOK_RELS,
            relations(
                relation("r1", "worksheet", "../../../../etc/passwd"),
                relation("r2", "worksheet", "worksheets/sheet2.xml"))),
        "is damaged");
    refused(
        "cyclic-relation.xlsx",
        with(
            BOOK_RELS,
            relations(
                relation("r1", "worksheet", "workbook.xml"),
                relation("r2", "worksheet", "workbook.xml"))),
        "");
    refused(
        "cyclic-strings.xlsx",
        with(
            BOOK_RELS,
            relations(
                relation("r1", "worksheet", "worksheets/sheet1.xml"),
                relation("r2", "worksheet", "worksheets/sheet1.xml"),
                relation("r3", "sharedStrings", "worksheets/sheet1.xml"))),
        "");
  }

  private void kinds() throws IOException {
    refused(
        "binary.xlsb",
        with(TYPES, types("application/vnd.ms-excel.sheet.binary.macroEnabled.main")),
        ".xlsb");
    refused(
        "letter.xlsx",
        with(
            TYPES,
            types(
                "application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml")),
        "another office document");
    refused(
        "strict.xlsx",
        with(
            RELS,
            relations(
                relation("r1", "officeDocument", BOOK)
                    .replace(OFFICE, "http://purl.oclc.org/ooxml/officeDocument/relationships"))),
        "Strict");
    refused(
        "page.xlsx",
        text("<html><table><tr><td>Job</td></tr></table></html>"),
        "is not a workbook");
    refused("table.xlsx", text("Job,Mix\nA,3000 psi\n"), "is not a workbook");
    refused("encrypted.xlsx", HostileFiles::encrypted, "is protected by a password");
  }

  private static void encrypted(OutputStream out) throws IOException {
    try (POIFSFileSystem files = new POIFSFileSystem()) {
      Encryptor encryptor = new EncryptionInfo(EncryptionMode.agile).getEncryptor();
      encryptor.confirmPassword("secret");
      try (OutputStream plain = encryptor.getDataStream(files)) {
        plain.write(whole());
      }
      files.writeFilesystem(out);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java has AES", e);
    }
  }

  private Path csvFolder(String name, Bytes sections) throws IOException {
    Path jobs = Files.createDirectory(folder.resolve(name));
    Files.writeString(jobs.resolve("Jobs.csv"), "Job,Mix\nA,3000 psi\n");
    file(name + "/Sections.csv", sections);
    return jobs;
  }

  private void csv(String name, Bytes sections, int status, String sentence) throws IOException {
    made.add(new Hostile(csvFolder(name, sections), status, sentence));
  }

  private void csv() throws IOException {
    String head = "Job,Section,Length,Width,Thickness (in),Notes\nA,F1,25',27',6,";
    csv("csv-sound", text(head + "fine\n"), ExitStatus.DONE, "");
    csv("csv-nul", text(head + "a\0b\n"), ExitStatus.NOTHING, "NUL");
    csv("csv-line", repeated(head, "x", 100 * MANY, "\n"), ExitStatus.NOTHING, "longer than");
    csv("csv-commas", repeated(head, ",", 100 * MANY, "\n"), ExitStatus.NOTHING, "longer than");
    csv(
        "csv-open-quote",
        repeated(head + "\"", "x\n", 50 * MANY, ""),
        ExitStatus.NOTHING,
        "longer than");
    csv("csv-quote", text(head + "\"open\n"), ExitStatus.NOTHING, "a quote is not closed");
    csv(
        "csv-utf8",
        raw(new byte[] {'J', 'o', 'b', (byte) 0xC3, '('}),
        ExitStatus.NOTHING,
        "is not UTF-8 text");
    csv(
        "csv-utf16",
        out -> out.write((head + "fine\n").getBytes(StandardCharsets.UTF_16LE)),
        ExitStatus.NOTHING,
        "NUL");
    csv(
        "csv-utf16-marked",
        out -> out.write((head + "fine\n").getBytes(StandardCharsets.UTF_16)),
        ExitStatus.NOTHING,
        "is not UTF-8 text");
    csv(
        "csv-much",
        out -> {
          for (int i = 0; i < 3 * MANY; i++) {
            text((i == 0 ? head : "A,F" + i + ",25',27',6,") + "note " + i + "\n").writeTo(out);
          }
        },
        ExitStatus.NOTHING,
        "more memory");
    Path linked = csvFolder("csv-linked", text(head + "fine\n"));
    Files.move(linked.resolve("Sections.csv"), folder.resolve("elsewhere.csv"));
    Files.createSymbolicLink(linked.resolve("Sections.csv"), folder.resolve("elsewhere.csv"));
    made.add(new Hostile(linked, ExitStatus.DONE, ""));
    Path astray = csvFolder("csv-links-astray", text(""));
    Files.delete(astray.resolve("Sections.csv"));
    Files.createSymbolicLink(astray.resolve("Sections.csv"), astray.resolve("Loop.csv"));
    Files.createSymbolicLink(astray.resolve("Loop.csv"), astray.resolve("Sections.csv"));
    Files.createSymbolicLink(astray.resolve("Pours.csv"), Path.of("/dev/zero"));
    made.add(new Hostile(astray, ExitStatus.NOTHING, "has no sheet Sections"));
    csv("csv-newlines", repeated(head + "fine\n", "\n", 3 * MANY, ""), ExitStatus.DONE, "");
  }
}
