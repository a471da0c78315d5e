package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.job.Practice;

class AheadOfPourTest {

  @TempDir Path folder;

  private WrittenJob with(String... rows) throws Exception {
    String[] lines = new String[rows.length + 1];
    lines[0] = "Job,Setting,Value";
    System.arraycopy(rows, 0, lines, 1, rows.length);
    return WrittenJob.in(folder)
        .sheet("Sections", "Job,Section,Length,Width,Thickness (in)", "J,A,20,10,4")
        .sheet("Practice", lines);
  }

  @Test
  void goodsHaveOneValueAndAMaterialItsOwn() throws Exception {
    Practice practice =
        with("J,\"Ahead of pour, goods\",5", "J,\"Ahead of pour, bar\",4").job().practice();
    assertEquals(Optional.of(5), practice.goodsAheadOfPourDays("form screw"));
    assertEquals(Optional.of(4), practice.goodsAheadOfPourDays("bar"));
    assertEquals(Optional.empty(), practice.aheadOfPourDays("concrete"));
  }

  @Test
  void goodsMayBeWrittenWithACapital() throws Exception {
    Practice practice = with("J,\"Ahead of pour, Goods\",5").job().practice();
    assertEquals(Optional.of(5), practice.goodsAheadOfPourDays("form screw"));
  }

  @Test
  void aBlankValueIsTheDefault() throws Exception {
    Practice practice = with("J,\"Ahead of pour, goods\",").job().practice();
    assertEquals(Optional.empty(), practice.goodsAheadOfPourDays("bar"));
  }

  @Test
  void theWordAloneAndAnAllowanceOfGoodsAreRefused() throws Exception {
    List<String> refused =
        List.of(
            "Practice.csv!B2: a text (as on this sheet of a template, e.g. Waste allowance;"
                + " Ahead of pour, bar)");
    assertEquals(refused, with("J,Ahead of pour,5").refused());
    assertEquals(refused, with("J,\"Allowance, goods\",5").refused());
  }
}
