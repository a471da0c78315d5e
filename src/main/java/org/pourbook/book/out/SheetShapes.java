package org.pourbook.book.out;

import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.util.Units;
import org.openxmlformats.schemas.drawingml.x2006.main.CTGroupTransform2D;
import org.openxmlformats.schemas.drawingml.x2006.main.CTLineProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTPath2D;
import org.openxmlformats.schemas.drawingml.x2006.main.CTRegularTextRun;
import org.openxmlformats.schemas.drawingml.x2006.main.CTShapeProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextBody;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextBodyProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextCharacterProperties;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTextParagraph;
import org.openxmlformats.schemas.drawingml.x2006.main.CTTransform2D;
import org.openxmlformats.schemas.drawingml.x2006.main.STLineCap;
import org.openxmlformats.schemas.drawingml.x2006.main.STPathFillMode;
import org.openxmlformats.schemas.drawingml.x2006.main.STPresetLineDashVal;
import org.openxmlformats.schemas.drawingml.x2006.main.STShapeType;
import org.openxmlformats.schemas.drawingml.x2006.main.STTextAlignType;
import org.openxmlformats.schemas.drawingml.x2006.main.STTextAnchoringType;
import org.openxmlformats.schemas.drawingml.x2006.main.STTextWrappingType;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTDrawing;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTGroupShape;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTOneCellAnchor;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTShape;
import org.pourbook.plan.Drawing;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Dot;
import org.pourbook.plan.Drawing.Line;
import org.pourbook.plan.Drawing.Stroke;
import org.pourbook.plan.Drawing.Words;

/**
 * Drawings as a sheet's own shapes: one group a drawing, fixed to a cell and of fixed size, since
 * columns are not equally wide on all machines. The lines of one stroke are one free form.
 */
final class SheetShapes {

  /** Turns count in 1/60,000 degree, sizes of letters in 1/100 pt. */
  private static final int TURN = 60_000;

  private static final int LETTER = 100;
  private static final byte[] BLACK = {0, 0, 0};
  private static final byte[] WHITE = {-1, -1, -1};

  private final CTDrawing sheet;
  private int lastId = 1;

  SheetShapes(CTDrawing sheet) {
    this.sheet = sheet;
  }

  /** Adds a drawing, its upper left corner at that of the first cell of a row, from 0. */
  void add(Drawing drawing, int row) {
    CTOneCellAnchor anchor = sheet.addNewOneCellAnchor();
    anchor.addNewFrom().setCol(0);
    anchor.getFrom().setColOff(0);
    anchor.getFrom().setRow(row);
    anchor.getFrom().setRowOff(0);
    anchor.addNewExt().setCx(emu(Drawing.WIDTH));
    anchor.getExt().setCy(emu(Drawing.HEIGHT));
    CTGroupShape group = group(anchor, drawing.job());
    Map<Stroke, CTPath2D> paths = new LinkedHashMap<>();
    for (Drawing.Mark mark : drawing.marks()) {
      if (mark instanceof Line line) {
        line(paths.computeIfAbsent(line.stroke(), stroke -> path(group, stroke)), line);
      } else if (mark instanceof Dot dot) {
        dot(group, dot);
      } else if (mark instanceof Words words) {
        words(group, words);
      }
    }
    anchor.addNewClientData();
  }

  private CTGroupShape group(CTOneCellAnchor anchor, String job) {
    CTGroupShape group = anchor.addNewGrpSp();
    var names = group.addNewNvGrpSpPr();
    names.addNewCNvPr().setId(++lastId);
    names.getCNvPr().setName("Plan of " + job);
    names.addNewCNvGrpSpPr();
    CTGroupTransform2D place = group.addNewGrpSpPr().addNewXfrm();
    place.addNewOff().setX(0);
    place.getOff().setY(0);
    place.addNewExt().setCx(emu(Drawing.WIDTH));
    place.getExt().setCy(emu(Drawing.HEIGHT));
    place.addNewChOff().setX(0);
    place.getChOff().setY(0);
    place.addNewChExt().setCx(emu(Drawing.WIDTH));
    place.getChExt().setCy(emu(Drawing.HEIGHT));
    return group;
  }

  private CTShapeProperties shape(
      CTShape shape, String name, double x, double y, double width, double height) {
    var names = shape.addNewNvSpPr();
    names.addNewCNvPr().setId(++lastId);
    names.getCNvPr().setName(name);
    names.addNewCNvSpPr();
    CTShapeProperties properties = shape.addNewSpPr();
    CTTransform2D place = properties.addNewXfrm();
    place.addNewOff().setX(emu(x));
    place.getOff().setY(emu(y));
    place.addNewExt().setCx(emu(width));
    place.getExt().setCy(emu(height));
    return properties;
  }

  /** A free form as large as the drawing, to which lines are added. */
  private CTPath2D path(CTGroupShape group, Stroke stroke) {
    CTShapeProperties properties =
        shape(group.addNewSp(), stroke.label(), 0, 0, Drawing.WIDTH, Drawing.HEIGHT);
    CTPath2D path = properties.addNewCustGeom().addNewPathLst().addNewPath();
    path.setW(emu(Drawing.WIDTH));
    path.setH(emu(Drawing.HEIGHT));
    path.setFill(STPathFillMode.NONE);
    properties.addNewNoFill();
    CTLineProperties line = properties.addNewLn();
    line.setW((int) emu(stroke.width()));
    line.setCap(STLineCap.FLAT);
    line.addNewSolidFill().addNewSrgbClr().setVal(BLACK);
    line.addNewPrstDash().setVal(dashes(stroke));
    return path;
  }

  private static STPresetLineDashVal.Enum dashes(Stroke stroke) {
    return switch (stroke) {
      case FORMED, SIDE, BAR, PLATE -> STPresetLineDashVal.SOLID;
      case EXISTING -> STPresetLineDashVal.SYS_DOT;
      case STRIP -> STPresetLineDashVal.DOT;
      case TURNED_DOWN -> STPresetLineDashVal.LG_DASH;
      case RECESS -> STPresetLineDashVal.DASH;
      case BELOW -> STPresetLineDashVal.SYS_DASH;
      case JOINT -> STPresetLineDashVal.LG_DASH_DOT;
    };
  }

  private static void line(CTPath2D path, Line line) {
    var from = path.addNewMoveTo().addNewPt();
    from.setX(emu(line.x1()));
    from.setY(emu(line.y1()));
    var to = path.addNewLnTo().addNewPt();
    to.setX(emu(line.x2()));
    to.setY(emu(line.y2()));
  }

  private void dot(CTGroupShape group, Dot dot) {
    double left = dot.x() - dot.radius();
    double top = dot.y() - dot.radius();
    double wide = 2 * dot.radius();
    CTShapeProperties properties = shape(group.addNewSp(), "anchor bolt", left, top, wide, wide);
    properties.addNewPrstGeom().setPrst(STShapeType.ELLIPSE);
    properties.addNewSolidFill().addNewSrgbClr().setVal(BLACK);
    properties.addNewLn().addNewNoFill();
  }

  /** A box of text, white so that its letters stay readable where lines cross them. */
  private void words(CTGroupShape group, Words words) {
    boolean middle = words.anchor() == Anchor.MIDDLE;
    double left = middle ? words.x() - words.width() / 2 : words.x();
    double top = words.y() - words.height() / 2;
    CTShape box = group.addNewSp();
    CTShapeProperties properties =
        shape(box, words.text(), left, top, words.width(), words.height());
    box.getNvSpPr().getCNvSpPr().setTxBox(true);
    properties.getXfrm().setRot((int) Math.round(words.degrees() * TURN));
    properties.addNewPrstGeom().setPrst(STShapeType.RECT);
    properties.addNewSolidFill().addNewSrgbClr().setVal(WHITE);
    properties.addNewLn().addNewNoFill();
    text(box.addNewTxBody(), words);
  }

  private static void text(CTTextBody body, Words words) {
    boolean middle = words.anchor() == Anchor.MIDDLE;
    CTTextBodyProperties room = body.addNewBodyPr();
    room.setLIns(0);
    room.setTIns(0);
    room.setRIns(0);
    room.setBIns(0);
    room.setWrap(STTextWrappingType.NONE);
    room.setAnchor(STTextAnchoringType.CTR);
    CTTextParagraph line = body.addNewP();
    line.addNewPPr().setAlgn(middle ? STTextAlignType.CTR : STTextAlignType.L);
    CTRegularTextRun run = line.addNewR();
    CTTextCharacterProperties letters = run.addNewRPr();
    letters.setLang("en-US");
    letters.setSz((int) Math.round(words.size() * LETTER));
    letters.addNewSolidFill().addNewSrgbClr().setVal(BLACK);
    letters.addNewLatin().setTypeface(Styles.FONT);
    run.setT(words.text());
  }

  private static long emu(double points) {
    return Math.round(points * Units.EMU_PER_POINT);
  }
}
