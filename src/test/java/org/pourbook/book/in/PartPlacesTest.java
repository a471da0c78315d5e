package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.outline.Placed;

/** Recesses and thickenings lie inside their slab and do not overlap. */
class PartPlacesTest {

  private static final String HEADING =
      "Job,Section,Kind,Part of,Length,Width,Diameter,Thickness (in),Drop (in),X,Y";

  /** An L from (100,50): 20 x 10 ft, the upper right 12 x 6 left out. */
  private static final String[] L_SHAPE = {
    "Job,Section,Point,X,Y",
    "J,A,1,100,50",
    "J,A,2,120,50",
    "J,A,3,120,54",
    "J,A,4,108,54",
    "J,A,5,108,60",
    "J,A,6,100,60"
  };

  @TempDir Path folder;

  private WrittenJob rectangle(String... parts) throws IOException {
    return sections("J,A,slab,,20,10,,4,,,", parts);
  }

  private WrittenJob drawn(String... parts) throws IOException {
    return sections("J,A,slab,,,,,4,,,", parts).sheet("Outlines", L_SHAPE);
  }

  private WrittenJob sections(String slab, String... parts) throws IOException {
    String[] lines = new String[parts.length + 2];
    lines[0] = HEADING;
    lines[1] = slab;
    System.arraycopy(parts, 0, lines, 2, parts.length);
    return WrittenJob.in(folder).sheet("Sections", lines);
  }

  @Test
  void aPartMayReachTheEdgeOfItsSlabButNotOverIt() throws Exception {
    assertEquals(List.of(), rectangle("J,R,recess,A,4,3,,4,2,16,7").refused());
    List<String> over = rectangle("J,R,recess,A,4,3,,4,2,16.5,7").refused();
    List<String> high = rectangle("J,R,recess,A,4,3,,4,2,16,7.5").refused();
    assertEquals(1, over.size());
    assertTrue(high.get(0).startsWith("Sections.csv!K3: "));
    assertTrue(
        over.get(0).startsWith("Sections.csv!J3: a place where the part lies inside its slab"));
  }

  @Test
  void aRoundPartMustLieInsideToo() throws Exception {
    assertEquals(List.of(), rectangle("J,R,recess,A,,,4,4,2,16,6").refused());
    assertEquals(1, rectangle("J,R,recess,A,,,4,4,2,16.5,6").refused().size());
  }

  @Test
  void ofAnOutlineThePlaceIsTakenFromTheCornerOfTheRectangleRoundIt() throws Exception {
    assertEquals(List.of(), drawn("J,R,recess,A,8,4,,4,2,0,6").refused());
    // from X 5 to 13 at Y 6 it lies where the L is left out
    assertEquals(1, drawn("J,R,recess,A,8,4,,4,2,5,6").refused().size());
    // as if the place were in the job's plan
    assertEquals(1, drawn("J,R,recess,A,2,2,,4,2,101,51").refused().size());
  }

  @Test
  void onlyTheSidesInsideAnOutlineAreFormed() throws Exception {
    // 8 x 4 at the upper end of the L's leg: three of its sides lie on the slab's edge
    Section recess = drawn("J,R,recess,A,8,4,,4,2,0,6").job().section("R");

    assertEquals(
        List.of("L1"),
        List.of("L1", "W2", "L2", "W1").stream().filter(recess.formed()::has).toList());
  }

  @Test
  void aDrawnPartLiesInTheJobsPlan() throws Exception {
    WrittenJob job = drawn("J,R,recess,A,,,,4,2,,");
    String[] inside = {"J,R,1,101,51", "J,R,2,105,51", "J,R,3,103,53"};
    String[] outside = {"J,R,1,1,1", "J,R,2,5,1", "J,R,3,3,3"};

    assertEquals(List.of(), job.sheet("Outlines", with(inside)).refused());
    assertEquals(
        List.of("Outlines.csv!D8: a place where the part lies inside its slab"),
        job.sheet("Outlines", with(outside)).refused());
  }

  private static String[] with(String... rows) {
    String[] all = new String[L_SHAPE.length + rows.length];
    System.arraycopy(L_SHAPE, 0, all, 0, L_SHAPE.length);
    System.arraycopy(rows, 0, all, L_SHAPE.length, rows.length);
    return all;
  }

  @Test
  void partsThatOverlapAreRefusedAndPartsThatTouchAreNot() throws Exception {
    String first = "J,R,recess,A,4,4,,4,2,2,2";

    assertEquals(List.of(), rectangle(first, "J,T,thickening,A,6,1,,12,,6,2").refused());
    assertEquals(
        List.of("Sections.csv!J4: a place where the part does not overlap R"),
        rectangle(first, "J,T,thickening,A,6,1,,12,,5.5,2").refused());
  }

  @Test
  void sizesAloneAreTrustedAndNoted() throws Exception {
    WrittenJob job = rectangle("J,R,recess,A,40,30,,4,2,,");

    assertEquals(List.of(), job.refused());
    assertEquals(
        List.of("Sections.csv!J3: its place in section A; its sizes are trusted"), job.notes());
  }

  @Test
  void aPlaceInAnOutlineIsShiftedByItsCorner() throws Exception {
    Job job = drawn("J,R,recess,A,2,2,,4,2,1,1").job();
    Placed placed = Placed.in(job.section("A"), job.section("R")).orElseThrow();

    assertEquals(101 * 0.3048, placed.dxM(), 1e-12);
    assertEquals(51 * 0.3048, placed.dyM(), 1e-12);
  }
}
