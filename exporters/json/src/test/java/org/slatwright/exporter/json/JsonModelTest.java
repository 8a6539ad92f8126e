package org.slatwright.exporter.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Minutes;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Point2;
import org.slatwright.api.model.Point3;
import org.slatwright.api.plan.Fit;
import org.slatwright.api.plan.OrderOfWork;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Plan;
import org.slatwright.api.plan.Quantities;
import org.slatwright.api.plan.Step;
import org.slatwright.api.plan.Wording;
import org.slatwright.testkit.SamplePlans;
import tools.jackson.databind.JsonNode;

/** Whoever has the file alone can build the rack again, to the last digit. */
class JsonModelTest {

  private static final BigDecimal NM_PER_MM = BigDecimal.valueOf(1_000_000);

  static Stream<Plan> plans() {
    return Written.anyPlan();
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyPieceFillsTheSameBox(Plan plan) throws IOException, ExportException {
    JsonNode read = Written.plan(plan);
    List<Piece> pieces = plan.assembly().pieces();
    assertEquals(pieces.size(), read.get("pieces").size());
    for (int i = 0; i < pieces.size(); i++) {
      JsonNode piece = read.get("pieces").get(i);
      JsonNode shape = byName(read.get("parts"), "mark", piece.get("part")).get("shape");
      List<Long> size = nm(shape, "length", "width", "thickness");
      List<Long> one = nm(piece.at("/placement/corner"));
      List<Long> other = inRack(piece.get("placement"), size);
      assertEquals(pieces.get(i).id(), piece.get("id").asString());
      assertEquals(nm(pieces.get(i).box().low()), least(one, other));
      assertEquals(nm(pieces.get(i).box().high()), greatest(one, other));
      assertEquals(nm(pieces.get(i).box().low()), nm(piece.at("/box/low")));
      assertEquals(nm(pieces.get(i).box().high()), nm(piece.at("/box/high")));
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyHoleIsWhereTheSchemaSaysItIs(Plan plan) throws IOException, ExportException {
    JsonNode read = Written.plan(plan);
    for (Piece piece : plan.assembly().pieces()) {
      JsonNode found = byName(read.get("pieces"), "id", piece.id());
      JsonNode part = byName(read.get("parts"), "mark", found.get("part"));
      for (Hole hole : piece.part().holes()) {
        JsonNode bored = byName(part.get("holes"), "name", hole.name());
        List<Long> mouth = inRack(found.get("placement"), onFace(bored, part.get("shape")));
        assertEquals(nm(piece.bore(hole).mouth()), mouth, piece.id() + " " + hole.name());
        assertEquals(hole.diameter().nanometres(), nm(bored, "diameter").get(0));
        assertEquals(hole.depth().nanometres(), nm(bored, "depth").get(0));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyOutlineIsTheSameCurve(Plan plan) throws IOException, ExportException {
    JsonNode patterns = Written.plan(plan).get("patterns");
    for (int i = 0; i < plan.patterns().size(); i++) {
      JsonNode features = patterns.get(i).get("features");
      assertEquals(
          plan.patterns().get(i).features(),
          Written.each(features).map(JsonModelTest::feature).toList());
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyEngravedStrokeIsTheSame(Plan plan) throws IOException, ExportException {
    JsonNode patterns = Written.plan(plan).get("patterns");
    for (int i = 0; i < plan.patterns().size(); i++) {
      assertEquals(
          plan.patterns().get(i).engraved(),
          Written.each(patterns.get(i).get("engraved")).map(JsonModelTest::stroke).toList());
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyPlateOfTheJigIsTheSame(Plan plan) throws IOException, ExportException {
    JsonNode jig = Written.plan(plan).get("jig");
    assertEquals(plan.jig().isPresent(), jig != null);
    if (jig != null) {
      assertEquals(
          plan.jig().get().plates().stream().map(plate -> plate.boundary()).toList(),
          Written.each(jig.get("plates")).map(p -> outline(p.get("boundary"))).toList());
      assertEquals(
          plan.jig().get().placed().stream().map(placed -> placed.plate().mark()).toList(),
          Written.each(jig.get("placed")).map(p -> p.get("plate").asString()).toList());
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyChainAddsUpAsWritten(Plan plan) throws IOException, ExportException {
    JsonNode chains = Written.plan(plan).get("chains");
    assertEquals(plan.chains().size(), chains.size());
    for (JsonNode chain : chains) {
      BigDecimal sum =
          Written.each(chain.get("links"))
              .map(link -> link.get("length").decimalValue())
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      assertEquals(0, sum.compareTo(chain.get("total").decimalValue()), chain::toString);
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyNameThatIsUsedIsDeclared(Plan plan) throws IOException, ExportException {
    JsonNode read = Written.plan(plan);
    Set<String> parts = names(read.get("parts"), "mark");
    Set<String> pieces = names(read.get("pieces"), "id");
    List<String> used = new ArrayList<>();
    read.get("groups").forEach(g -> g.get("pieces").forEach(id -> used.add(id.asString())));
    for (JsonNode joint : read.get("joints")) {
      used.addAll(texts(joint, "upright", "rail"));
      joint.get("pins").forEach(pin -> used.addAll(texts(pin, "dowel")));
    }
    read.get("fasteners").forEach(f -> used.addAll(texts(f, "through", "into")));
    assertTrue(pieces.containsAll(used), used::toString);
    assertTrue(parts.containsAll(names(read.get("pieces"), "part")));
    assertTrue(parts.containsAll(names(read.get("cutList"), "part")));
  }

  @ParameterizedTest
  @MethodSource("plans")
  void everyMarkAtTheSawIsDeclared(Plan plan) throws IOException, ExportException {
    JsonNode read = Written.plan(plan);
    JsonNode cutting = read.get("cutting");
    Set<String> parts = names(read.get("parts"), "mark");
    Set<String> spares = names(cutting.get("spares"), "mark");
    for (JsonNode timber : cutting.get("timbers")) {
      Set<String> boards =
          Written.each(timber.get("boards"))
              .flatMap(board -> Written.each(board.get("marks")))
              .map(JsonNode::asString)
              .collect(Collectors.toSet());
      Set<String> cut =
          Written.each(timber.get("boards"))
              .flatMap(board -> Written.each(board.get("cuts")))
              .peek(c -> assertEquals(c.get("spare").asBoolean(), spares.contains(mark(c))))
              .map(JsonModelTest::mark)
              .collect(Collectors.toSet());
      for (JsonNode setting : timber.get("settings")) {
        assertTrue(boards.containsAll(names(setting.get("works"), "board")));
        assertTrue(cut.containsAll(names(setting.get("works"), "piece")));
      }
      cut.removeAll(spares);
      assertTrue(parts.containsAll(cut), cut::toString);
      assertTrue(parts.containsAll(names(timber.get("missing"), "mark")));
    }
    for (JsonNode shelf : cutting.get("shelves")) {
      shelf.get("marks").forEach(mark -> assertTrue(parts.contains(mark.asString())));
    }
  }

  @ParameterizedTest
  @MethodSource("plans")
  void theFindingsAreWordForWord(Plan plan) throws IOException, ExportException {
    JsonNode read = Written.plan(plan);
    assertEquals(
        plan.findings().stream()
            .map(
                f ->
                    List.of(
                        f.severity().word(),
                        f.rule(),
                        f.subject(),
                        f.message(),
                        f.value(),
                        f.limit(),
                        f.advice(),
                        f.source()))
            .toList(),
        Written.each(read.get("findings"))
            .map(
                f ->
                    texts(
                        f,
                        "severity",
                        "rule",
                        "subject",
                        "message",
                        "value",
                        "limit",
                        "advice",
                        "source"))
            .toList());
  }

  @ParameterizedTest
  @MethodSource("plans")
  void theQuantitiesAreThoseOfThePlan(Plan plan) throws IOException, ExportException {
    JsonNode read = Written.plan(plan).get("quantities");
    Quantities all = plan.quantities();
    assertEquals(
        List.of(
            all.mass().grams(),
            all.finishArea().squareMillimetres(),
            all.glue().grams(),
            (long) all.dowels(),
            (long) all.fixings()),
        Stream.of("grams", "finishSquareMillimetres", "glueGrams", "dowels", "fixings")
            .map(key -> read.get(key).asLong())
            .toList());
    assertEquals(nm(all.centreOfGravity()), nm(read.get("centreOfGravity")));
    assertEquals(List.of(all.dowelRod().nanometres()), nm(read, "dowelRod"));
    assertEquals(
        all.parts().stream().map(p -> p.part().mark() + " " + p.each().grams()).toList(),
        Written.each(read.get("parts"))
            .map(p -> p.get("part").asString() + " " + p.get("gramsEach").asLong())
            .toList());
  }

  @ParameterizedTest
  @MethodSource("plans")
  void whatFitsIsAsInThePlan(Plan plan) throws IOException, ExportException {
    assertEquals(
        plan.fits(), Written.each(Written.plan(plan).get("fits")).map(JsonModelTest::fit).toList());
  }

  @ParameterizedTest
  @MethodSource("plans")
  void theOrderOfWorkIsThatOfThePlan(Plan plan) throws IOException, ExportException {
    JsonNode read = Written.plan(plan).get("work");
    OrderOfWork work = plan.work();
    assertEquals(work.work().count(), read.get("workMinutes").asInt());
    assertEquals(work.elapsed().count(), read.get("elapsedMinutes").asInt());
    assertEquals(work.steps(), Written.each(read.get("steps")).map(JsonModelTest::step).toList());
  }

  private static Step step(JsonNode step) {
    JsonNode then = step.get("then");
    return new Step(
        step.get("number").asInt(),
        step.get("id").asString(),
        step.get("title").asString(),
        Written.each(step.get("doing")).map(JsonModelTest::wording).toList(),
        Written.each(step.get("parts"))
            .map(each -> new Step.Parts(mark(each), each.get("count").asInt()))
            .toList(),
        Written.each(step.get("places")).map(JsonNode::asString).toList(),
        Written.each(step.get("shows")).map(JsonNode::asString).toList(),
        Written.each(step.get("tools")).map(JsonNode::asString).toList(),
        Written.each(step.get("supplies")).map(JsonModelTest::wording).toList(),
        new Minutes(step.get("workMinutes").asInt()),
        Optional.ofNullable(then)
            .map(
                wait ->
                    new Step.Wait(
                        new Minutes(wait.get("minutes").asInt()), wait.get("why").asString())),
        Written.each(step.get("after")).map(JsonNode::asInt).toList(),
        wording(step.get("check")),
        step.get("caution").asString());
  }

  private static Wording wording(JsonNode wording) {
    return new Wording(
        wording.get("words").asString(),
        nm(wording.get("lengths")).stream().map(Length::new).toList());
  }

  @Test
  void anyTitleIsReadBackWordForWord() throws IOException, ExportException {
    for (String title : SamplePlans.ODD_TITLES) {
      assertEquals(title, Written.plan(SamplePlans.titled(title)).get("title").asString());
    }
  }

  /** corner + a × length + b × width + c × thickness, as the schema has it. */
  private static List<Long> inRack(JsonNode placement, List<Long> own) {
    long[] at = nm(placement.get("corner")).stream().mapToLong(Long::longValue).toArray();
    List<String> ways = texts(placement, "length", "width", "thickness");
    for (int i = 0; i < ways.size(); i++) {
      int axis = "xyz".indexOf(ways.get(i).charAt(1));
      at[axis] += ways.get(i).charAt(0) == '-' ? -own.get(i) : own.get(i);
    }
    return List.of(at[0], at[1], at[2]);
  }

  private static List<Long> onFace(JsonNode hole, JsonNode shape) {
    List<Long> size = nm(shape, "length", "width", "thickness");
    long along = nm(hole, "along").get(0);
    long across = nm(hole, "across").get(0);
    return switch (hole.get("face").asString()) {
      case "back" -> List.of(along, across, 0L);
      case "face-side" -> List.of(along, across, size.get(2));
      case "face-edge" -> List.of(along, 0L, across);
      case "back-edge" -> List.of(along, size.get(1), across);
      case "start-end" -> List.of(0L, along, across);
      case "far-end" -> List.of(size.get(0), along, across);
      default -> throw new AssertionError(hole);
    };
  }

  private static Pattern.Feature feature(JsonNode feature) {
    String operation = feature.get("operation").asString();
    Optional<Length> depth =
        Optional.ofNullable(feature.get("depth")).map(node -> new Length(nm(node.decimalValue())));
    return new Pattern.Feature(
        Stream.of(Pattern.Operation.values())
            .filter(value -> value.name().replace('_', '-').equalsIgnoreCase(operation))
            .findFirst()
            .orElseThrow(),
        outline(feature.get("outline")),
        depth);
  }

  private static Pattern.Stroke stroke(JsonNode stroke) {
    return new Pattern.Stroke(
        Written.each(stroke.get("points")).map(JsonModelTest::point).toList());
  }

  private static Fit fit(JsonNode fit) {
    return new Fit(
        fit.get("thing").asString(),
        fit.get("shelf").asInt(),
        fit.get("turned").asBoolean(),
        fit.get("across").asInt(),
        fit.get("deep").asInt(),
        Optional.ofNullable(fit.get("high")).map(JsonNode::asInt),
        new Length(nm(fit, "spareAcross").get(0)),
        new Length(nm(fit, "spareDeep").get(0)),
        Optional.ofNullable(fit.get("spareAbove")).map(n -> new Length(nm(n.decimalValue()))),
        fit.get("enough").asBoolean());
  }

  private static Outline outline(JsonNode outline) {
    return outline.get("kind").asString().equals("circle")
        ? new Outline.Circle(
            point(outline.get("centre")), new Length(nm(outline, "diameter").get(0)))
        : new Outline.Path(Written.each(outline.get("edges")).map(JsonModelTest::edge).toList());
  }

  private static Outline.Edge edge(JsonNode edge) {
    Point2 from = point(edge.get("from"));
    Point2 to = point(edge.get("to"));
    return edge.get("kind").asString().equals("line")
        ? new Outline.Line(from, to)
        : new Outline.Arc(
            from, to, point(edge.get("centre")), edge.get("counterClockwise").asBoolean());
  }

  private static Point2 point(JsonNode point) {
    List<Long> nm = nm(point);
    return new Point2(new Length(nm.get(0)), new Length(nm.get(1)));
  }

  private static JsonNode byName(JsonNode list, String key, JsonNode name) {
    return byName(list, key, name.asString());
  }

  private static JsonNode byName(JsonNode list, String key, String name) {
    return Written.each(list)
        .filter(node -> node.get(key).asString().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static Set<String> names(JsonNode list, String key) {
    return Written.each(list).map(node -> node.get(key).asString()).collect(Collectors.toSet());
  }

  private static String mark(JsonNode node) {
    return node.get("mark").asString();
  }

  private static List<String> texts(JsonNode node, String... keys) {
    return Stream.of(keys).map(key -> node.get(key).asString()).toList();
  }

  private static List<Long> nm(JsonNode list) {
    return Written.each(list).map(node -> nm(node.decimalValue())).toList();
  }

  private static List<Long> nm(JsonNode node, String... keys) {
    return Stream.of(keys).map(key -> nm(node.get(key).decimalValue())).toList();
  }

  private static List<Long> nm(Point3 point) {
    return List.of(point.x().nanometres(), point.y().nanometres(), point.z().nanometres());
  }

  private static long nm(BigDecimal millimetres) {
    return millimetres.multiply(NM_PER_MM).longValueExact();
  }

  private static List<Long> least(List<Long> one, List<Long> other) {
    return IntStream.range(0, 3).mapToObj(i -> Math.min(one.get(i), other.get(i))).toList();
  }

  private static List<Long> greatest(List<Long> one, List<Long> other) {
    return IntStream.range(0, 3).mapToObj(i -> Math.max(one.get(i), other.get(i))).toList();
  }
}
