package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChangeRowsTest {

  @TempDir Path folder;

  private WrittenJob with(String change) throws Exception {
    return WrittenJob.in(folder)
        .sheet("Sections", "Job,Section,Length,Width,Thickness (in)", "J,A,20,10,4")
        .sheet("Changes", "Job,Change,What,Section,State", change);
  }

  @Test
  void aChangeThatIsTakenUpNamesASectionOfTheJob() throws Exception {
    assertEquals(List.of(), with("J,C1,Wider,A,taken up").refused());
    List<String> refused =
        List.of("Changes.csv!D2: the section of this job that has taken the change up");
    assertEquals(refused, with("J,C1,Wider,,taken up").refused());
    assertEquals(refused, with("J,C1,Wider,B,taken up").refused());
  }

  @Test
  void aChangeIsOpenUntilItIsSaidOtherwise() throws Exception {
    assertEquals(1, with("J,C1,Wider,A,").job().openChanges().size());
    assertEquals(0, with("J,C1,Wider,A,declined").job().openChanges().size());
  }

  @Test
  void anOpenChangeOfASectionThatIsNotThereIsNoted() throws Exception {
    WrittenJob job = with("J,C1,A shed,SHED,open");

    assertEquals(List.of(), job.refused());
    assertEquals(List.of("Changes.csv!D2: a section of this job"), job.notes());
  }
}
