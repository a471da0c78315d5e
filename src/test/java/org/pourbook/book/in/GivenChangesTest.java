package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.desk.FoundChange;
import org.pourbook.job.GivenSheet;

/** Inputs compared as they read, not as they are written. */
class GivenChangesTest {

  private static final String JOBS = "Job,Units,Pour date,Mix\n";
  private static final String SECTIONS = "Job,Section,Length,Width,Thickness (in),Count,Waste %\n";

  @TempDir Path folder;

  private List<GivenSheet> given(String name, String jobs, String sections) throws IOException {
    Path input = Files.createDirectories(folder.resolve(name));
    Files.writeString(input.resolve("Jobs.csv"), jobs);
    Files.writeString(input.resolve("Sections.csv"), sections);
    return JobsReader.read(input, Optional.empty()).value().given();
  }

  private List<String> between(String jobs, String sections, String jobsNow, String sectionsNow)
      throws IOException {
    return GivenChanges.between(given("a", jobs, sections), given("b", jobsNow, sectionsNow))
        .stream()
        .map(GivenChangesTest::words)
        .toList();
  }

  private static String words(FoundChange found) {
    return String.join(
        "|",
        found.job(),
        found.section(),
        found.sheet(),
        found.what(),
        found.before(),
        found.now());
  }

  @Test
  void otherWaysToWriteTheSameAreNoChange() throws IOException {
    assertEquals(
        List.of(),
        between(
            JOBS + "A,,2027-04-13,3000 psi\nB,m,,25 MPa\n",
            SECTIONS + "A,F,24',20 ft,4,,\nB,F,3.2,2,100,1,5\n",
            "Mix,Job,Notes,Units,Pour date\n25MPa,B,,m,\n3000  PSI,A,,ft-in,2027-04-13\n",
            SECTIONS
                + "B,F,3200 mm,2.0 m,100 mm,,5%\n"
                + "A,F,\"24'-0\"\"\",\"240\"\"\",\"4\"\"\",1,\n"));
  }

  @Test
  void changedCellsAddedAndRemovedRowsAreTold() throws IOException {
    assertEquals(
        List.of(
            "B||Jobs|added||Mix 3000 psi",
            "A|F|Sections|Length|24'|26'",
            "B|F|Sections|added||Length 9', Width 9', Thickness 4",
            "A|G|Sections|removed|Length 8', Width 8', Thickness 4|"),
        between(
            JOBS + "A,,,3000 psi\n",
            SECTIONS + "A,G,8',8',4,,\nA,F,24',20',4,,\n",
            JOBS + "A,,,3000 psi\nB,,,3000 psi\n",
            SECTIONS + "A,F,26',20',4,,\nB,F,9',9',4,,\n"));
  }

  @Test
  void aBareNumberInOtherUnitsIsAChange() throws IOException {
    assertEquals(
        List.of(
            "A||Jobs|Units||m",
            "A|F|Sections|Length|24|24",
            "A|F|Sections|Width|20|20",
            "A|F|Sections|Thickness|4|4"),
        between(
            JOBS + "A,,,3000 psi\n",
            SECTIONS + "A,F,24,20,4,,\n",
            JOBS + "A,m,,3000 psi\n",
            SECTIONS + "A,F,24,20,4,,\n"));
  }
}
