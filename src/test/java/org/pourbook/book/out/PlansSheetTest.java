package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.apache.poi.util.Units;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFShapeGroup;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFSimpleShape;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openxmlformats.schemas.drawingml.x2006.main.CTPath2D;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTransform2D;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Estimate;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Dot;
import org.pourbook.plan.Drawing.Line;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.plan.Drawing.Words;
import org.pourbook.takeoff.TakeOff;

/** The sheet Plans, read back. */
class PlansSheetTest {

  private static final Drawing FIRST =
      new Drawing(
          "A",
          "invented",
          List.of(
              new Line(10, 20, 110, 20, Stroke.FORMED),
              new Line(110, 20, 110, 70, Stroke.FORMED),
              new Line(50, 20, 50, 70, Stroke.JOINT),
              new Dot(30, 24, 2),
              new Words(60, 12, "8'-0\"", 7, -90, Anchor.MIDDLE)));

  private static final Drawing SECOND =
      new Drawing("B", "", List.of(new Line(1, 2, 3, 4, Stroke.BAR)));

  @TempDir Path folder;

  private Path written(String name) throws IOException {
    Path file = folder.resolve(name);
    List<Sheet> sheets = List.of(new PlansSheet(List.of(FIRST, SECOND)));
    WorkbookFile.write(sheets, new Paper(false, "test"), "test", file, false);
    return file;
  }

  private static List<XSSFShape> groups(XSSFWorkbook workbook) {
    return workbook.getSheet("Plans").getDrawingPatriarch().getShapes();
  }

  private static List<XSSFSimpleShape> shapes(XSSFWorkbook workbook, int group) {
    XSSFSheet sheet = workbook.getSheet("Plans");
    return sheet
        .getDrawingPatriarch()
        .getShapes((XSSFShapeGroup) groups(workbook).get(group))
        .stream()
        .map(XSSFSimpleShape.class::cast)
        .toList();
  }

  @Test
  void eachJobIsOneGroupOfShapes() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(written("a.xlsx")))) {
      assertEquals(2, groups(workbook).size());
      // two strokes, a dot, words
      assertEquals(
          List.of("formed side", "control joint", "anchor bolt", "8'-0\""),
          shapes(workbook, 0).stream().map(XSSFShape::getShapeName).toList());
      assertEquals(1, shapes(workbook, 1).size());
    }
  }

  @Test
  void linesDotsAndWordsStandWhereTheyAreDrawn() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(written("a.xlsx")))) {
      List<XSSFSimpleShape> shapes = shapes(workbook, 0);
      CTPath2D path =
          shapes.get(0).getCTShape().getSpPr().getCustGeom().getPathLst().getPathArray(0);
      assertEquals(2, path.sizeOfLnToArray());
      assertEquals((long) Units.toEMU(110), path.getLnToArray(1).getPt().getX());
      assertEquals((long) Units.toEMU(70), path.getLnToArray(1).getPt().getY());
      assertEquals((long) Units.toEMU(28), place(shapes.get(2)).getOff().getX());
      assertEquals((long) Units.toEMU(22), place(shapes.get(2)).getOff().getY());
      CTTransform2D words = place(shapes.get(3));
      assertEquals(-90 * 60_000, words.getRot());
      assertEquals(Units.toEMU(120), 2 * (long) words.getOff().getX() + words.getExt().getCx(), 1);
      assertEquals("8'-0\"", shapes.get(3).getText());
    }
  }

  private static CTTransform2D place(XSSFSimpleShape shape) {
    return shape.getCTShape().getSpPr().getXfrm();
  }

  @Test
  void eachJobBeginsOnItsOwnPageUnderItsCode() throws IOException {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(written("a.xlsx")))) {
      XSSFSheet sheet = workbook.getSheet("Plans");
      assertEquals("A", sheet.getRow(0).getCell(0).getStringCellValue());
      assertEquals("invented", sheet.getRow(1).getCell(0).getStringCellValue());
      assertArrayEquals(new int[] {21}, sheet.getRowBreaks());
      assertEquals("B", sheet.getRow(22).getCell(0).getStringCellValue());
      assertEquals("Plans!$A$1:$H$44", workbook.getPrintArea(0));
      assertEquals(2, from(sheet, 0));
      assertEquals(24, from(sheet, 1));
      // A4 lying, its margins off [pt]: 595 - 36 - 50.4
      assertTrue(heightPoints(sheet, 22) < 508);
    }
  }

  private static int from(XSSFSheet sheet, int group) {
    return sheet
        .getDrawingPatriarch()
        .getCTDrawing()
        .getOneCellAnchorArray(group)
        .getFrom()
        .getRow();
  }

  private static double heightPoints(XSSFSheet sheet, int rows) {
    double height = 0;
    for (int i = 0; i < rows; i++) {
      height += sheet.getRow(i).getHeightInPoints();
    }
    return height;
  }

  @Test
  void theSameDrawingsGiveTheSameBytes() throws IOException {
    assertArrayEquals(Files.readAllBytes(written("a.xlsx")), Files.readAllBytes(written("b.xlsx")));
  }

  @Test
  void fiftyJobsAreDrawnAndOneMoreLeavesTheSheetOutWithANote() {
    assertTrue(names(jobs(50)).contains("Plans"));
    assertFalse(names(jobs(51)).contains("Plans"));
    assertTrue(noted(jobs(51)).contains("--plans DIR"), noted(jobs(51)));
    assertEquals("", noted(jobs(50)));
  }

  private static List<String> names(Estimate estimate) {
    return OrderSheets.of(estimate).stream().map(Sheet::name).toList();
  }

  private static String noted(Estimate estimate) {
    return RecordSheets.basis(estimate).rows().stream()
        .filter(fact -> fact.setting().equals("Sheet Plans"))
        .map(RecordSheets.Fact::source)
        .findFirst()
        .orElse("");
  }

  private static Estimate jobs(int count) {
    Estimate one = DemoEstimate.spiteful("A");
    List<TakeOff> takeOffs = Collections.nCopies(count, one.takeOffs().get(0));
    Batch batch = one.batch();
    return new Estimate(batch, takeOffs, one.bought(), one.problems(), one.version());
  }

  @Test
  void aFolderOfCsvFilesHasNoPlans() throws IOException {
    Path target = folder.resolve("order");
    OrderWorkbook.write(DemoEstimate.both(), target, false);
    assertFalse(Files.exists(target.resolve("Plans.csv")));
    assertTrue(Files.exists(target.resolve("Joints.csv")));
  }
}
