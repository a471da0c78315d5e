package org.pourbook.book.in;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.opc.PackageRelationshipCollection;
import org.apache.poi.openxml4j.opc.PackageRelationshipTypes;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.util.XMLHelper;
import org.jspecify.annotations.Nullable;
import org.pourbook.book.in.CellValues.CellStyle;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.problem.Quoted;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The workbook of XML parts, {@code .xlsx} and {@code .xlsm}: its package opened by POI for reading
 * only, its parts read by SAX. POI's own model takes ten times the memory and shows blanks where
 * parts are damaged, so what it would hide is checked here.
 */
final class XlsxBook {

  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships/";

  /** A sheet of 100,000 sections is about a tenth of this when unzipped. */
  private static final long LARGEST_PART = 1L << 30;

  static {
    ZipSecureFile.setMaxEntrySize(LARGEST_PART);
  }

  private final PackagePart book;

  private XlsxBook(PackagePart book) {
    this.book = book;
  }

  /** Returns the sheets chosen. */
  static RawBook read(Path path, RawBook.Choice choice) throws UnreadableFile {
    try {
      OPCPackage parts = OPCPackage.open(path.toFile(), PackageAccess.READ);
      try {
        RawBook book = new XlsxBook(mainPart(path, parts)).read(choice);
        return new RawBook(book.names(), book.sheets(), List.of(InputFiles.hashed(path)));
      } finally {
        parts.revert();
      }
    } catch (UnreadableFile e) {
      throw e;
    } catch (IOException
        | OpenXML4JException
        | SAXException
        | ParserConfigurationException
        | RuntimeException e) {
      // Damaged bytes come out of POI as any of a dozen unchecked exceptions.
      throw new UnreadableFile(path + " " + whatIsWrong(e), e);
    }
  }

  private static String whatIsWrong(Throwable e) {
    StringBuilder words = new StringBuilder();
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      words.append(cause.getMessage()).append('\n');
    }
    String said = words.toString();
    if (said.contains("Zip bomb") || said.contains("potentially malicious")) {
      return "is refused: it unpacks to far more than a workbook holds";
    }
    if (said.contains("DOCTYPE")) {
      return "is refused: its XML declares a document type, which no workbook needs";
    }
    if (said.contains("Truncated")) {
      return "is cut off: copy or download it again";
    }
    String detail = e instanceof Damage ? " (" + e.getMessage() + ")" : "";
    return "is damaged" + detail + ": open it in a spreadsheet program and save it again";
  }

  private static PackagePart mainPart(Path path, OPCPackage parts)
      throws UnreadableFile, OpenXML4JException, Damage {
    if (parts.getRelationshipsByType(PackageRelationshipTypes.STRICT_CORE_DOCUMENT).size() > 0) {
      throw new UnreadableFile(path + " is in the Strict form: save it as a plain .xlsx workbook");
    }
    PackageRelationshipCollection documents =
        parts.getRelationshipsByType(PackageRelationshipTypes.CORE_DOCUMENT);
    if (documents.size() == 0) {
      throw new UnreadableFile(path + " is a zip file, but no workbook: save it as .xlsx");
    }
    PackagePart main = parts.getPart(documents.getRelationship(0));
    if (main == null) {
      throw new Damage("the workbook part is missing");
    }
    String type = main.getContentType().toLowerCase(Locale.ROOT);
    if (type.contains("sheet.binary")) {
      throw new UnreadableFile(path + " is an .xlsb workbook: save it as .xlsx");
    }
    if (!type.contains("spreadsheetml") && !type.contains("ms-excel")) {
      throw new UnreadableFile(path + " is no workbook but another office document");
    }
    return main;
  }

  private RawBook read(RawBook.Choice choice)
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    WorkbookPart workbook = new WorkbookPart();
    parse(book, workbook, "the workbook part");
    List<WorkbookPart.SheetEntry> entries = new ArrayList<>();
    for (WorkbookPart.SheetEntry entry : workbook.sheets()) {
      if (isWorksheet(entry)) {
        entries.add(entry);
      }
    }
    return read(entries, new SheetCells(strings(), styles(), workbook.date1904()), choice);
  }

  /** What a sheet's cells refer to. */
  private record SheetCells(List<GivenCell> strings, List<CellStyle> styles, boolean date1904) {}

  private RawBook read(
      List<WorkbookPart.SheetEntry> entries, SheetCells cells, RawBook.Choice choice)
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    List<String> all = entries.stream().map(WorkbookPart.SheetEntry::name).toList();
    List<String> names = new ArrayList<>(all);
    Map<String, RawSheet> sheets = new LinkedHashMap<>();
    for (WorkbookPart.SheetEntry entry : entries) {
      Optional<String> from = GoingOn.from(entry.name(), all);
      if (from.isPresent()
          && GoingOn.isOne(entry.name(), rows(entry, cells, GoingOn.NAME_ROWS).rows())) {
        names.remove(entry.name());
        RawSheet before = sheets.get(from.get());
        if (before != null) {
          sheets.put(from.get(), GoingOn.joined(before, rows(entry, cells, Integer.MAX_VALUE)));
        }
      } else if (choice.reads(entry.name(), all)) {
        sheets.put(entry.name(), rows(entry, cells, Integer.MAX_VALUE));
      }
    }
    return new RawBook(names, List.copyOf(sheets.values()), List.of());
  }

  /** Returns the first rows of a sheet, as many as are asked for. */
  private RawSheet rows(WorkbookPart.SheetEntry entry, SheetCells cells, int most)
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    SheetPart rows = new SheetPart(cells.strings(), cells.styles(), cells.date1904(), most);
    parse(part(entry), rows, "sheet " + entry.name());
    return new RawSheet(entry.name(), entry.name(), rows.rows());
  }

  private boolean isWorksheet(WorkbookPart.SheetEntry entry) {
    PackageRelationship relation = book.getRelationship(entry.relation());
    return relation == null || relation.getRelationshipType().endsWith("/worksheet");
  }

  private PackagePart part(WorkbookPart.SheetEntry entry) throws OpenXML4JException, Damage {
    PackageRelationship relation = book.getRelationship(entry.relation());
    PackagePart part = relation == null ? null : relatedPart(relation);
    if (part == null) {
      throw new Damage("sheet " + entry.name() + " is missing");
    }
    return part;
  }

  private @Nullable PackagePart relatedPart(PackageRelationship relation)
      throws OpenXML4JException {
    try {
      return book.getRelatedPart(relation);
    } catch (IllegalArgumentException e) {
      return null;
    }
  }

  private List<CellStyle> styles()
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    StylesPart styles = new StylesPart();
    parseRelated("styles", styles);
    return styles.cellStyles();
  }

  private List<GivenCell> strings()
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    StringsPart strings = new StringsPart();
    parseRelated("sharedStrings", strings);
    return strings.strings();
  }

  private void parseRelated(String kind, DefaultHandler handler)
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    for (PackageRelationship relation : book.getRelationshipsByType(RELATIONS + kind)) {
      PackagePart part = relatedPart(relation);
      if (part == null) {
        throw new Damage("the part " + kind + " is missing");
      }
      parse(part, handler, "the part " + kind);
    }
  }

  private void parse(PackagePart part, DefaultHandler handler, String what)
      throws IOException, SAXException, ParserConfigurationException {
    XMLReader reader = XMLHelper.newXMLReader();
    reader.setContentHandler(handler);
    try (InputStream in = part.getInputStream()) {
      if (in == null) {
        throw new Damage(what + " is missing");
      }
      reader.parse(new InputSource(in));
    } catch (SheetPart.Enough e) {
      // the rest of the part was not asked for
    } catch (Damage e) {
      throw new Damage(what + ": " + e.getMessage());
    } catch (SAXException e) {
      throw new Damage(what, e);
    }
  }

  /** Something in a part that no sound workbook has. */
  static final class Damage extends SAXException {
    private static final long serialVersionUID = 1L;

    /** Part of a message may come from the file: it stays one line that can be read. */
    Damage(String message) {
      super(Quoted.of(message));
    }

    Damage(String message, Exception cause) {
      super(message, cause);
    }
  }
}
