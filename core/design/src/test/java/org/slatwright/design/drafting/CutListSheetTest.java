package org.slatwright.design.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Part;
import org.slatwright.api.plan.Plan;
import org.slatwright.design.Planner;
import org.slatwright.design.framing.Framing;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.RackFileReader;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Sizing;

class CutListSheetTest {

  private static final String HERB_RACK =
      """
      slatwright: 1
      title: Herb rack
      units: %s
      timber:
        frame: { section: 44 mm x 44 mm, species: larch, lengths: [ { length: 2400 mm } ] }
        slats: { section: 18 mm x 95 mm }
        dowel: { diameter: 10 mm }
      rack: { interior-width: 580 mm, rail-length: 320 mm, upright: 900 mm }
      slats: { per-shelf: 3 }
      shop: { paper: %s }
      """;

  @Test
  void everyPartHasItsLine() throws Exception {
    List<String> words = words(cutLists(plan("mm", "A3").sheets()));

    assertInOrder(words, "U", "upright", "4", "900 × 44 × 44 mm", "larch, frame stock 44 × 44 mm");
    assertInOrder(words, "R", "rail", "4", "320 × 44 × 44 mm");
    assertInOrder(words, "S", "slat", "6", "668 × 18 × 95 mm", "larch, slat stock 18 × 95 mm");
    assertInOrder(words, "D", "dowel", "8", "ø 10 × 79 mm");
  }

  @Test
  void itComesBeforeTheFirstBoardIsCut() throws Exception {
    List<String> titles = plan("mm", "A4").sheets().stream().map(Sheet::title).toList();

    int list = titles.indexOf("Cut list");
    assertEquals(list + 1, titles.indexOf("Cutting diagrams"), titles.toString());
  }

  @ParameterizedTest
  @ValueSource(strings = {"A4", "A3", "letter", "tabloid"})
  void aLongListGoesOnFromSheetToSheet(String paper) throws Exception {
    Rack rack = Sizing.solve(file("in", paper));
    Assembly assembly = Framing.frame(rack);
    Part slat = assembly.parts().get(2);
    List<Part> parts =
        IntStream.rangeClosed(1, 150)
            .mapToObj(
                i ->
                    new Part(
                        "S" + i,
                        slat.name(),
                        slat.role(),
                        slat.shape(),
                        slat.material(),
                        slat.grain(),
                        slat.holes(),
                        slat.quantity()))
            .toList();
    List<SheetDrawing> drawings =
        CutListSheet.of(
            rack,
            new Assembly(
                parts,
                assembly.pieces(),
                assembly.groups(),
                assembly.joints(),
                assembly.fasteners()));
    List<Sheet> sheets =
        IntStream.range(0, drawings.size())
            .mapToObj(i -> drawings.get(i).sheet(5 + i, 20))
            .toList();

    assertTrue(sheets.size() > 1, () -> sheets.size() + " sheets");
    assertEquals("drawings/05-cut-list", sheets.get(0).name());
    assertEquals("drawings/06-cut-list", sheets.get(1).name());
    sheets.forEach(Tidy::check);
    assertInOrder(words(sheets), parts.stream().map(Part::mark).toArray(String[]::new));
  }

  private static void assertInOrder(List<String> words, String... parts) {
    List<String> left = new ArrayList<>(words);
    for (String part : parts) {
      int at = left.indexOf(part);
      assertTrue(at >= 0, () -> "'" + part + "' is not where it belongs in " + words);
      left = left.subList(at + 1, left.size());
    }
  }

  private static List<Sheet> cutLists(List<Sheet> sheets) {
    return sheets.stream().filter(sheet -> sheet.title().equals("Cut list")).toList();
  }

  private static List<String> words(List<Sheet> sheets) {
    return sheets.stream()
        .flatMap(sheet -> Inked.of(sheet).words().stream())
        .map(Inked.Words::text)
        .toList();
  }

  private static Plan plan(String units, String paper) throws RackFileException {
    return Planner.plan(file(units, paper));
  }

  private static RackFile file(String units, String paper) throws RackFileException {
    byte[] bytes = HERB_RACK.formatted(units, paper).getBytes(StandardCharsets.UTF_8);
    return RackFileReader.read(bytes, "rack.yaml", List.of());
  }
}
