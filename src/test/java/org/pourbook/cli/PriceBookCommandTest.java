package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Small batches with prices of their own, through the whole program into CSV files. */
class PriceBookCommandTest {

  @TempDir private Path folder;
  private Path jobs;
  private Path out;
  private String err = "";

  @BeforeEach
  void makeFolders() throws IOException {
    jobs = Files.createDirectory(folder.resolve("jobs"));
    out = Files.createDirectory(folder.resolve("out"));
  }

  private void write(String sheet, String... lines) throws IOException {
    Files.write(jobs.resolve(sheet + ".csv"), List.of(lines));
  }

  private int estimate() {
    StringWriter errText = new StringWriter();
    int status =
        Main.commandLine()
            .setOut(new PrintWriter(new StringWriter()))
            .setErr(new PrintWriter(errText))
            .execute("estimate", jobs.toString(), "-o", out.toString());
    err = errText.toString();
    return status;
  }

  /** Returns the rows of an output sheet that begin with a text. */
  private List<String> rows(String sheet, String start) throws IOException {
    return Files.readAllLines(out.resolve(sheet + ".csv")).stream()
        .filter(line -> line.startsWith(start))
        .toList();
  }

  private String cell(String sheet, String start, String heading) throws IOException {
    List<String> lines = Files.readAllLines(out.resolve(sheet + ".csv"));
    int at = Arrays.asList(lines.get(0).split(",")).indexOf(heading);
    return rows(sheet, start).get(0).split(",", -1)[at];
  }

  @Test
  void aPackInGallonsIsTheSameForAJobInMetres() throws IOException {
    write("Jobs", "Job,Units,Mix", "F,ft-in,3000 psi", "M,m,25 MPa");
    write(
        "Sections",
        "Job,Section,Length,Width,Thickness,Formed sides,Base,Vapor retarder",
        "F,S,20 m,8 m,100 mm,none,0,no",
        "M,S,20 m,8 m,100 mm,none,0,no");
    write(
        "Prices",
        "Material,Size,Supplier,Unit,Pack,Price",
        "curing compound,,S,pail,5 gal,72",
        "seam tape,,S,roll,180 gal,10");
    assertEquals(3, estimate(), "tape is no liquid");
    assertTrue(err.contains("Prices.csv!E3: found 180 gal"), err);
    // 160 m2 = 1722 ft2 at 200 ft2 a gallon is 8.6 gal = 32.6 L: two pails of 5 gal
    assertEquals("2", cell("Materials", "F,ft-in,curing compound", "Packs"));
    assertEquals("2", cell("Materials", "M,m,curing compound", "Packs"));
    assertEquals("18.92705892", cell("Materials", "M,m,curing compound", "Pack holds"));
  }

  @Test
  void aBarOfMetricStockIsTakenWholeInAJobInFeet() throws IOException {
    write("Jobs", "Job,Units,Mix", "F,ft-in,3000 psi");
    write(
        "Sections",
        "Job,Section,Length,Width,Thickness,Formed sides,Base,Vapor retarder,Bars",
        "F,S,24',4',4,none,0,no,10M @ 16 EW");
    write("Prices", "Material,Size,Supplier,Unit,Price,Stock length", "bar,10M,S,each,13,6 m");
    assertEquals(0, estimate(), err);
    assertFalse(err.contains("cannot be cut"), err);
    assertEquals("S", cell("Materials", "F,bar,10M", "Supplier"));
  }

  @Test
  void aDeliveryPlaceIsTheSameHoweverItIsWritten() throws IOException {
    write(
        "Jobs",
        "Job,Mix,Pour date,Deliver to",
        "A,3000 psi,2027-04-13,Yard",
        "B,3000 psi,2027-04-13,yard");
    write(
        "Sections",
        "Job,Section,Length,Width,Thickness,Formed sides,Base,Vapor retarder",
        "A,S,10',10',4,none,0,no",
        "B,S,10',10',4,none,0,no");
    write("Prices", "Material,Size,Supplier,Unit,Pack,Price", "curing compound,,S,pail,5 gal,72");
    write("Suppliers", "Supplier,Delivery fee", "S,38");
    assertEquals(0, estimate(), err);
    assertEquals(1, rows("Orders", "").stream().filter(row -> row.contains(",delivery,")).count());
  }

  @Test
  void aSpacingOfLessThanAnInchIsAProblemAndNoEndlessMat() throws IOException {
    write("Jobs", "Job,Mix", "A,3000 psi");
    write("Sections", "Job,Section,Length,Width,Thickness,Bars", "A,S,200',200',4,#4 @ 0.0001 EW");
    assertEquals(4, estimate());
    assertTrue(err.contains("Sections.csv!F2: found #4 @ 0.0001 EW"), err);
  }

  @Test
  void aRowBelowTheTableIsNamedByItsFirstCell() throws IOException {
    write("Jobs", "Job,Mix", "A,3000 psi", "", "B,3000 psi");
    write("Sections", "Job,Section,Length,Width,Thickness", "A,S,20',20',4");
    assertEquals(0, estimate(), err);
    assertTrue(err.contains("Jobs.csv!A4: found a row below the end of the table"), err);
  }
}
