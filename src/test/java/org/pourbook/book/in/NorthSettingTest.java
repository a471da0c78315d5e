package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.job.Setting;

class NorthSettingTest {

  @TempDir Path folder;

  private WrittenJob with(String value) throws Exception {
    return WrittenJob.in(folder)
        .sheet("Sections", "Job,Section,Length,Width,Thickness (in)", "J,A,20,10,4")
        .sheet("Practice", "Job,Setting,Value", "J,North," + value);
  }

  private double north(String value) throws Exception {
    return with(value).job().practice().number(Setting.NORTH);
  }

  @Test
  void northIsWrittenInDegreesClockwise() throws Exception {
    assertEquals(0, north("0"));
    assertEquals(337.5, north("337.5"));
    assertTrue(Double.isNaN(north("")));
  }

  @Test
  void anyOtherDirectionIsRefused() throws Exception {
    List<String> refused =
        List.of("Practice.csv!C2: a value of North [0 to 360 degrees clockwise from Y]");
    for (String value : List.of("361", "-1", "NE")) {
      assertEquals(refused, with(value).refused(), value);
    }
  }
}
