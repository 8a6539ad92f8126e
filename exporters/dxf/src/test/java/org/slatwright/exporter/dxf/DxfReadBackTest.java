package org.slatwright.exporter.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Plan;
import org.slatwright.testkit.SamplePlans;
import org.slatwright.testkit.WareRack;

/** What ezdxf reads is what the plan says: an independent reader of the format as the judge. */
class DxfReadBackTest {

  private static final double EXACT = 1e-9;

  private static final Map<String, String> COLOURS =
      new TreeMap<>(
          Map.of(
              "DRILL", "5",
              "CUT_INSIDE", "3",
              "CUT_OUTSIDE", "1",
              "ENGRAVE", "6",
              "REFERENCE", "8"));

  @TempDir static Path folder;
  private static List<FileRead> files;

  /**
   * One file that was written, and what was read in it.
   *
   * @param written how
   * @param pattern what it is of
   */
  private record FileRead(Written written, Pattern pattern, ReadByEzdxf read) {}

  @BeforeAll
  static void readEveryFile() throws IOException, InterruptedException {
    List<Written> ways = new ArrayList<>(Written.inEveryWay(WareRack.inMillimetres()));
    ways.addAll(Written.inEveryWay(WareRack.inInches()));
    ways.addAll(Written.inEveryWay(SamplePlans.everyKind()));
    SamplePlans.examples().forEach(example -> ways.add(new Written(example, "R2000", "plan")));
    List<String> texts = new ArrayList<>();
    for (Written way : ways) {
      texts.addAll(way.texts());
    }
    Iterator<ReadByEzdxf> read = ReadByEzdxf.read(texts, folder).iterator();
    files = new ArrayList<>();
    for (Written way : ways) {
      way.plan().patterns().forEach(pattern -> files.add(new FileRead(way, pattern, read.next())));
    }
  }

  static Stream<FileRead> files() {
    return files.stream();
  }

  @ParameterizedTest
  @MethodSource("files")
  void nothingIsAmiss(FileRead file) {
    assertEquals(List.of(), file.read().all("FAULT"));
    assertEquals(List.of(), file.read().all("OTHER"));
  }

  @ParameterizedTest
  @MethodSource("files")
  void theVersionAndTheUnitAreStated(FileRead file) {
    boolean old = file.written().version().equals("R12");
    boolean inches = file.written().mmPerUnit() > 1;
    assertEquals(List.of(old ? "AC1009" : "AC1015"), file.read().one("VERSION"));
    if (!old) {
      // DXF Reference, header variables: $INSUNITS 1 = inches, 4 = millimetres; $MEASUREMENT 0 =
      // English, 1 = metric.
      assertEquals(inches ? List.of("1", "0") : List.of("4", "1"), file.read().one("UNITS"));
    }
    List<String> texts = file.read().all("TEXT").stream().map(text -> text.get(4)).toList();
    String says = "unit " + (inches ? "in" : "mm") + ", ";
    assertTrue(texts.stream().anyMatch(text -> text.startsWith(says)), texts::toString);
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyHoleIsWhereThePlanHasIt(FileRead file) {
    double unit = file.written().mmPerUnit();
    List<List<String>> read = file.read().all("CIRCLE");
    List<Pattern.Feature> circles = features(file, Outline.Circle.class);
    assertEquals(circles.size(), read.size());
    for (int i = 0; i < read.size(); i++) {
      Outline.Circle circle = (Outline.Circle) circles.get(i).outline();
      assertEquals(circles.get(i).operation().name(), read.get(i).get(0));
      assertEquals(circle.centre().x().inMm(), number(read.get(i), 1) * unit, EXACT);
      assertEquals(circle.centre().y().inMm(), number(read.get(i), 2) * unit, EXACT);
      assertEquals(circle.diameter().inMm(), 2 * number(read.get(i), 3) * unit, EXACT);
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyContourIsClosedAndEnclosesTheArea(FileRead file) {
    double unit = file.written().mmPerUnit();
    List<List<String>> read = file.read().all("CONTOUR");
    List<Pattern.Feature> paths = features(file, Outline.Path.class);
    assertEquals(paths.size(), read.size());
    for (int i = 0; i < read.size(); i++) {
      Outline.Path path = (Outline.Path) paths.get(i).outline();
      double area = OutlineArea.mm2(path);
      assertEquals(paths.get(i).operation().name(), read.get(i).get(0));
      assertEquals("True", read.get(i).get(1), "closed");
      assertEquals(area, number(read.get(i), 2) * unit * unit, area * EXACT);
      assertEquals(path.edges().size(), Integer.parseInt(read.get(i).get(3)));
      assertTrue(number(read.get(i), 4) * unit > 0.01, "an edge of no length");
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyStrokeIsEngravedFromPointToPoint(FileRead file) {
    double unit = file.written().mmPerUnit();
    List<List<String>> read = file.read().all("STROKE");
    assertEquals(file.pattern().engraved().size(), read.size());
    for (int i = 0; i < read.size(); i++) {
      List<Point2> points = file.pattern().engraved().get(i).points();
      assertEquals("ENGRAVE", read.get(i).get(0));
      assertEquals(2 * points.size(), read.get(i).size() - 1);
      for (int j = 0; j < points.size(); j++) {
        assertEquals(points.get(j).x().inMm(), number(read.get(i), 2 * j + 1) * unit, EXACT);
        assertEquals(points.get(j).y().inMm(), number(read.get(i), 2 * j + 2) * unit, EXACT);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void onlyTheLayersUsedAreDeclaredEachInItsColour(FileRead file) {
    // The reader itself adds 0 and Defpoints where they are missing.
    Set<String> added = Set.of("0", "Defpoints");
    List<List<String>> expected =
        COLOURS.entrySet().stream()
            .filter(layer -> isUsed(layer.getKey(), file.pattern()))
            .map(layer -> List.of(layer.getKey(), layer.getValue()))
            .toList();
    assertEquals(
        expected,
        file.read().all("LAYER").stream()
            .filter(layer -> !added.contains(layer.get(0)))
            .sorted(Comparator.comparing(layer -> layer.get(0)))
            .toList());
  }

  @ParameterizedTest
  @MethodSource("files")
  void nothingIsDrawnTwiceOrOnLayer0(FileRead file) {
    for (String kind : List.of("CONTOUR", "CIRCLE", "LINE", "TEXT", "STROKE")) {
      List<List<String>> all = file.read().all(kind);
      assertEquals(all.size(), all.stream().distinct().count(), kind);
      assertTrue(all.stream().noneMatch(values -> values.get(0).equals("0")), kind);
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void theSizeCheckIsAsLongAsItSaysAndAboveThePiece(FileRead file) {
    double unit = file.written().mmPerUnit();
    List<String> line = file.read().one("LINE");
    assertEquals("REFERENCE", line.get(0));
    assertEquals(unit > 1 ? 4 : 100, number(line, 3) - number(line, 1), EXACT);
    double top =
        file.pattern().features().stream()
            .mapToDouble(feature -> top(feature.outline()))
            .max()
            .orElseThrow();
    assertTrue(number(line, 2) * unit >= top + 9, () -> "at " + line + ", the piece to " + top);
  }

  @Test
  void textIsShownAsItStands() throws IOException, InterruptedException {
    List<String> plain = List.of("Reol: 3/8\" & <ø> ^J \\P é 100%", "رف الشتلات");
    assertEquals(plain, shown(plain));
  }

  @Test
  void whatNoReaderShowsAlikeIsReplaced() throws IOException, InterruptedException {
    assertEquals(
        List.of("two lines", "% %u", "Seedlings ?"),
        shown(List.of("two\nlines", "%%u", "Seedlings 🌱")));
  }

  @Test
  void anyOddTitleCanBeReadBack() throws IOException, InterruptedException {
    assertEquals(SamplePlans.ODD_TITLES.size(), shown(SamplePlans.ODD_TITLES).size());
  }

  /** What a reader shows of each text, the same in both versions. */
  private static List<String> shown(List<String> titles) throws IOException, InterruptedException {
    Plan plan = WareRack.inMillimetres();
    Pattern plain = plan.patterns().get(1);
    List<Pattern> patterns = new ArrayList<>();
    for (String title : titles) {
      String name = "title-" + patterns.size();
      Pattern.Label label = new Pattern.Label(Point2.ORIGIN, Length.mm(5), title);
      patterns.add(new Pattern(name, title, plain.features(), List.of(label), List.of()));
    }
    Plan titled = SamplePlans.withPatterns(plan, patterns);
    List<String> shown = labels(new Written(titled, "R2000", "plan"));
    assertEquals(shown, labels(new Written(titled, "R12", "plan")));
    return shown;
  }

  private static List<String> labels(Written written) throws IOException, InterruptedException {
    List<String> shown = new ArrayList<>();
    for (ReadByEzdxf read : ReadByEzdxf.read(written.texts(), folder)) {
      assertEquals(List.of(), read.all("FAULT"));
      shown.add(read.all("TEXT").get(0).get(4));
    }
    return shown;
  }

  private static List<Pattern.Feature> features(FileRead file, Class<? extends Outline> kind) {
    return file.pattern().features().stream()
        .filter(feature -> kind.isInstance(feature.outline()))
        .toList();
  }

  private static double number(List<String> values, int index) {
    return Double.parseDouble(values.get(index));
  }

  private static double top(Outline outline) {
    return outline instanceof Outline.Circle circle
        ? circle.centre().y().plus(circle.diameter().half()).inMm()
        : ((Outline.Path) outline)
            .edges().stream().mapToDouble(edge -> edge.from().y().inMm()).max().orElseThrow();
  }

  private static boolean isUsed(String layer, Pattern pattern) {
    return switch (layer) {
      case "REFERENCE" -> true;
      case "ENGRAVE" -> !pattern.engraved().isEmpty();
      default ->
          pattern.features().stream().anyMatch(feature -> feature.operation().name().equals(layer));
    };
  }
}
