package org.slatwright.exporter.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Axis;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Plan;
import org.slatwright.exporter.dxf.StandingPlate.Passage;
import org.slatwright.exporter.dxf.StandingPlate.Slack;
import org.slatwright.testkit.SamplePlans;

/**
 * The jig of every example, cut from its sheets by the path in their files, as ezdxf reads them,
 * and put together piece by piece: JTS is the cutter. A piece is known by the mark engraved on it,
 * as it is at the bench.
 */
class AssembledJigTest {

  private static final Slack SLACK = new Slack(0.01, 0.075);

  private static final String LASER = "{process: laser, kerf: 0.15 mm}";
  private static final String RELIEVED =
      "{process: router, tool: 3.175 mm, inside-corners: relieved}";
  private static final String ROUND = "{process: router, tool: 3.175 mm}";

  @TempDir static Path folder;
  private static List<Cut> all;

  /**
   * One jig and its files.
   *
   * @param cutter that it is planned for
   * @param width that this cutter takes, in mm
   */
  private record Cut(
      String cutter, double width, Plan plan, List<ReadByEzdxf> paths, List<ReadByEzdxf> plates) {

    Jig jig() {
      return plan.jig().orElseThrow();
    }

    /** The jig put together, when the cutter takes so much; every piece is used, and once. */
    List<StandingPlate> assembled(double taken) {
      List<CutSheet.Piece> pieces =
          new ArrayList<>(
              paths.stream().flatMap(path -> new CutSheet(path, taken).pieces().stream()).toList());
      List<StandingPlate> standing =
          jig().placed().stream()
              .map(placed -> StandingPlate.of(placed, taken(pieces, placed)))
              .toList();
      assertEquals(List.of(), pieces, "left over");
      return standing;
    }

    private Polygon taken(List<CutSheet.Piece> pieces, Jig.Placed placed) {
      ReadByEzdxf plate = plates.get(jig().plates().indexOf(placed.plate()));
      for (CutSheet.Piece piece : pieces) {
        Optional<Polygon> wood = piece.as(plate);
        if (wood.isPresent()) {
          pieces.remove(piece);
          return wood.get();
        }
      }
      throw new AssertionError("no piece is marked " + placed.plate().mark());
    }

    /** What the slots are longer than the tabs, as the jig is designed: 0.1 mm, or 1/64 in. */
    double slotPlay() {
      return plan.lengths().unit() == Unit.INCH ? 25.4 / 64 : 0.1;
    }

    @Override
    public String toString() {
      return plan.title() + ", " + cutter;
    }
  }

  @BeforeAll
  static void readEveryJig() throws IOException, InterruptedException {
    all = new ArrayList<>();
    all.addAll(cut(LASER, 0.15));
    all.addAll(cut(RELIEVED, 3.175));
    all.addAll(cut(ROUND, 3.175));
  }

  private static List<Cut> cut(String cutter, double width)
      throws IOException, InterruptedException {
    List<Plan> plans = SamplePlans.examplesWith("shop.cutter=" + cutter);
    List<String> texts = new ArrayList<>();
    for (Plan plan : plans) {
      texts.addAll(written(plan, paths(plan)));
      texts.addAll(written(plan, plates(plan)));
    }
    Iterator<ReadByEzdxf> read = ReadByEzdxf.read(texts, folder).iterator();
    return plans.stream()
        .map(
            plan -> new Cut(cutter, width, plan, next(read, paths(plan)), next(read, plates(plan))))
        .toList();
  }

  private static List<String> written(Plan plan, List<Pattern> patterns) throws IOException {
    return new Written(SamplePlans.withPatterns(plan, patterns), "R2000", "mm").texts();
  }

  private static List<ReadByEzdxf> next(Iterator<ReadByEzdxf> read, List<Pattern> patterns) {
    return patterns.stream().map(pattern -> read.next()).toList();
  }

  private static List<Pattern> paths(Plan plan) {
    return plan.patterns().stream()
        .filter(pattern -> pattern.name().matches("jig/sheet-\\d+-path"))
        .toList();
  }

  /** One for each plate of the jig, in their order. */
  private static List<Pattern> plates(Plan plan) {
    return plan.jig().orElseThrow().plates().stream()
        .map(
            plate ->
                plan.patterns().stream()
                    .filter(pattern -> pattern.name().startsWith("jig/" + plate.mark() + "-"))
                    .findFirst()
                    .orElseThrow())
        .toList();
  }

  /** Whose slots take square tabs. */
  static Stream<Cut> square() {
    return all.stream().filter(cut -> !cut.cutter().equals(ROUND));
  }

  static Stream<Cut> round() {
    return all.stream().filter(cut -> cut.cutter().equals(ROUND));
  }

  @ParameterizedTest
  @MethodSource("square")
  void noPlateIsInTheWayOfAnother(Cut cut) {
    assertEquals(List.of(), inTheWay(cut.assembled(cut.width())));
  }

  /** What is so in round corners is told in a note of the plan. */
  @ParameterizedTest
  @MethodSource("round")
  void cornersThatStayRoundKeepSquareTabsOut(Cut cut) {
    assertFalse(inTheWay(cut.assembled(cut.width())).isEmpty());
  }

  @ParameterizedTest
  @MethodSource("square")
  void aThinnerCutThanToldLeavesTheTabsTooThick(Cut cut) {
    assertFalse(inTheWay(cut.assembled(cut.width() - 0.1)).isEmpty());
  }

  private static List<String> inTheWay(List<StandingPlate> plates) {
    List<String> found = new ArrayList<>();
    for (StandingPlate one : plates) {
      for (StandingPlate other : plates) {
        if (one != other && one.overlaps(other, SLACK)) {
          found.add(one.mark() + " in " + other.mark());
        }
      }
    }
    return found;
  }

  /** Each of two cheeks has two tabs in every guide plate, and the register goes through both. */
  @ParameterizedTest
  @MethodSource("square")
  void everyTabFillsItsSlotButForThePlay(Cut cut) {
    List<Tab> tabs = tabs(cut.assembled(cut.width()));
    assertEquals(4 * cut.jig().plates().get(0).quantity() + 2, tabs.size());
    for (Tab tab : tabs) {
      double across = tab.slot().normal() == Axis.Y ? 0 : cut.slotPlay();
      assertEquals(across, tab.playAcross(), SLACK.wallMm(), tab::toString);
      assertEquals(cut.slotPlay(), tab.playAlong(), SLACK.wallMm(), tab::toString);
    }
  }

  /** A laser told as 0.15 mm that takes 0.6 mm has every tab loose by the 0.45 mm more, twice. */
  @ParameterizedTest
  @MethodSource("square")
  void aWiderCutThanToldLeavesEveryTabLoose(Cut cut) {
    List<Tab> tabs = tabs(cut.assembled(cut.width() + 0.45));
    assertFalse(tabs.isEmpty());
    for (Tab tab : tabs) {
      assertEquals(cut.slotPlay() + 0.9, tab.playAlong(), SLACK.wallMm(), tab::toString);
      assertTrue(tab.playAcross() > 0.45 - SLACK.wallMm(), tab::toString);
    }
  }

  /**
   * A tab in its slot.
   *
   * @param slot the plate that has the slot
   * @param tab of the plate that is thick along that axis
   */
  private record Tab(StandingPlate slot, StandingPlate plate, Passage tab) {

    /** In mm, along the thickness of the tab. */
    double playAcross() {
      return slot.play(plate.normal(), tab.across(), tab.along().shrunk(SLACK.cornerMm()));
    }

    /** In mm, along the edge that the tab stands out from. */
    double playAlong() {
      Axis along = slot.third(plate.normal());
      return slot.play(along, tab.along(), tab.across().shrunk(SLACK.cornerMm()));
    }

    @Override
    public String toString() {
      return plate.mark() + " in " + slot.mark() + " at " + tab;
    }
  }

  private static List<Tab> tabs(List<StandingPlate> plates) {
    List<Tab> tabs = new ArrayList<>();
    for (StandingPlate plate : plates) {
      for (StandingPlate slot : plates) {
        if (plate.normal() != slot.normal()) {
          plate.tabsIn(slot, SLACK).forEach(tab -> tabs.add(new Tab(slot, plate, tab)));
        }
      }
    }
    return tabs;
  }

  /** The bit finds no edge on its way through the stack, and no room beside it. */
  @ParameterizedTest
  @MethodSource("square")
  void theGuideHolesLineUp(Cut cut) {
    double radius = cut.jig().guideDiameter().inMm() / 2;
    List<StandingPlate> guides =
        cut.assembled(cut.width()).stream().filter(plate -> plate.normal() == Axis.Y).toList();
    assertEquals(cut.jig().plates().get(0).quantity(), guides.size());
    cut.jig()
        .railEdgeToHoles()
        .forEach(
            below -> {
              Point middle = new GeometryFactory().createPoint(new Coordinate(0, -below.inMm()));
              guides.forEach(
                  guide -> assertEquals(radius, guide.section().distance(middle), SLACK.wallMm()));
            });
  }
}
