package org.pourbook.book.out;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/**
 * A jobs workbook of any length: each job has ten sections like those of the demo's bakery, garage,
 * terrace and pavilion, its sizes a few inches from those of its neighbours, forty jobs a day.
 */
public final class Season {

  private static final LocalDate FIRST_DAY = LocalDate.of(2027, 1, 4);

  private static final int JOBS_A_DAY = 40;

  /** Every fourth job is delivered to the yard, where jobs of a day share boards and bars. */
  private static final String JOBS =
      """
      Job|Description|Site|Pour date|Units|Mix|Placing|Deliver to|Tax %|Air temp|Humidity|Wind|Concrete temp|Rain chance
      {job}|Four floors|{job} Mill Lane|{day}|ft-in|3500 psi|chute|{to}|6.5|68|55|6|70|10
      """;

  private static final String SECTIONS =
      """
      Job|Section|Kind|Where|Count|Pour|Length|Width|Diameter|Thickness (in)|Part of|X|Y|Fall (in per ft)|Drop (in)|Edge depth (in)|Edge width (in)|Edge sides|Edge bars|Bars|Mesh|Fiber|Formed sides|Finish|Joint spacing
      {job}|BAKERY|slab|inside|1|1|40'-{in}"|26'-{in}"||5||||||18|12|all|2 #4|#4 @ 16 EW|||all|trowel|
      {job}|WASH|recess|inside|1|1|10'-0"|8'-0"||5|BAKERY|28'-0"|16'-0"|1/8|2|||||#4 @ 16 EW|||all|broom|
      {job}|OVEN|thickening|inside|1|1|12'-{in}"|2'-0"||12|BAKERY|3'-0"|6'-0"||||||3 #4||||||
      {job}|GARAGE|slab|garage|1|1|24'-{in}"|24'||4||||1/8||16|12|L1, L2, W2|2 #4||6x6-W1.4xW1.4||L1, L2, W2|trowel|
      {job}|APRON|slab|outside|1|1|24'-{in}"|6'||4||||1/4|||||| #3 @ 18 EW|||L1, W1, W2|broom|
      {job}|STOOP|slab|outside|1|1|6'|3'-6"||4||||1/4||8|8|L1, W1, W2|||||L1, W1, W2|broom|none
      {job}|TERRACE|slab|outside|1|1|20'|14'-{in}"||4||||1/4||||||||1.5|all|broom|5 ft
      {job}|STEPS|footing|outside|1|1|5'-{in}"|3'-0"||8|||||||||||||all||
      {job}|PIERS|pier|outside|12|1|||18 in|42|||||||||4 #4||||||
      {job}|PAD|slab|outside|1|1|12'-{in}"|12'-0"||4||||1/8|||||| #3 @ 18 EW|||all|broom|
      """;

  private static final String PLATES =
      """
      Job|Plate|Section|Length|Count|Bolt|Spacing|Plate thickness (in)|Projection (in)|Width (in)
      {job}|P1|BAKERY|40'-{in}"|2|1/2 x 10|4 ft|1.5|2.5|5.5
      {job}|P2|GARAGE|24'-{in}"|2|1/2 x 10||||5.5
      """;

  private static final String JOINTS =
      """
      Job|Joint|Section|Side|Kind|Length|Filler depth (in)
      {job}|J1|APRON|L2|tie|24'|
      {job}|J2|TERRACE|W1|isolation|14'|4
      """;

  private Season() {}

  /** Writes the workbook of so many jobs; ten times as many sections. */
  public static void write(Path file, int jobs) throws IOException {
    try (SXSSFWorkbook workbook = new SXSSFWorkbook(100);
        OutputStream out = Files.newOutputStream(file)) {
      sheet(workbook, "Jobs", JOBS, jobs);
      sheet(workbook, "Sections", SECTIONS, jobs);
      sheet(workbook, "Plates", PLATES, jobs);
      sheet(workbook, "Joints", JOINTS, jobs);
      workbook.write(out);
    }
  }

  private static void sheet(SXSSFWorkbook workbook, String name, String text, int jobs) {
    Sheet sheet = workbook.createSheet(name);
    CellStyle style = workbook.createCellStyle();
    List<String> lines = text.lines().toList();
    row(sheet.createRow(0), style, lines.get(0));
    for (int job = 0; job < jobs; job++) {
      for (String line : lines.subList(1, lines.size())) {
        row(sheet.createRow(sheet.getLastRowNum() + 1), style, of(job, line));
      }
    }
  }

  private static String of(int job, String line) {
    return line.replace("{job}", "J%05d".formatted(job + 1))
        .replace("{day}", FIRST_DAY.plusDays(job / JOBS_A_DAY).toString())
        .replace("{to}", job % 4 == 0 ? "yard" : "site")
        .replace("{in}", Integer.toString(job * 5 % 12));
  }

  private static void row(Row row, CellStyle style, String line) {
    String[] texts = line.split("\\|", -1);
    for (int i = 0; i < texts.length; i++) {
      String text = texts[i].strip();
      if (text.isEmpty()) {
        continue;
      }
      Cell cell = row.createCell(i);
      cell.setCellStyle(style);
      if (text.matches("\\d+(\\.\\d+)?")) {
        cell.setCellValue(Double.parseDouble(text));
      } else {
        cell.setCellValue(text);
      }
    }
  }
}
