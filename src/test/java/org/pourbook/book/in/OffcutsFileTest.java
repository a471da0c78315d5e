package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.measure.Length;
import org.pourbook.problem.Checked;

class OffcutsFileTest {

  @TempDir Path folder;

  private Checked<OffcutsFile.Offcuts> read(String... lines) throws IOException {
    return OffcutsFile.read(Files.write(folder.resolve("yard.csv"), List.of(lines)));
  }

  private static List<Length> lengths(Checked<OffcutsFile.Offcuts> read) {
    return read.value().offcuts().stream().map(some -> some.length()).toList();
  }

  @Test
  void aBareLengthIsInTheUnitOfItsRowItsHeadingOrItsSize() throws IOException {
    assertEquals(
        List.of(Length.ofMillimetres(2500), Length.ofFeet(5), Length.ofFeet(9)),
        lengths(
            read(
                "Material,Size,Units,Stock length (ft),Pieces",
                "form board,38x89,m,2.5,1",
                "Form board,2x4,ft-in,5,2",
                "bar,#4,,9,2")));
    assertEquals(
        List.of(Length.ofMillimetres(2500)),
        lengths(read("Material,Size,Stock length [m],Pieces", "form board,2x4,2.5,1")));
    assertEquals(
        List.of(Length.ofMillimetres(2500)),
        lengths(read("Material,Size,Stock length,Pieces", "bar,10M,2.5,1")));
  }

  @Test
  void badCellsAreNamedAndTheOtherRowsAreRead() throws IOException {
    Checked<OffcutsFile.Offcuts> read =
        read(
            "Material,Size,Stock length,Pieces",
            "plank,2x6,9'-0\",1",
            "form board,,9'-0\",1",
            "bar,#4,0,1",
            "bar,#4,9'-0\",1.5",
            "bar,#4,9'-0\",2");
    assertEquals(List.of(Length.ofFeet(9)), lengths(read));
    assertEquals(
        List.of("yard.csv!A2", "yard.csv!B3", "yard.csv!C4", "yard.csv!D5"),
        read.problems().stream().map(problem -> problem.place().toString()).toList());
  }

  @Test
  void aFileWithoutTheHeadingsIsRefused() {
    assertThrows(UnreadableFile.class, () -> read("Material,Length", "bar,9"));
  }
}
