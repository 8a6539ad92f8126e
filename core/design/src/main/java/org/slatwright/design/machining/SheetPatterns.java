package org.slatwright.design.machining;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.api.plan.Pattern;
import org.slatwright.api.plan.Pattern.Operation;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.outline.Laid;
import org.slatwright.design.outline.Outlines;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Rack.Cutter;

/** Draws whole sheets with the plates that are cut from them. */
final class SheetPatterns {

  private final Rack.JigSheet sheet;
  private final LengthFormat lengths;
  private final List<List<Nest.Placed>> sheets;
  private final Map<Plate, List<Pattern.Stroke>> marks;

  SheetPatterns(Rack.JigSheet sheet, LengthFormat lengths, List<List<Nest.Placed>> sheets) {
    this.sheet = sheet;
    this.lengths = lengths;
    this.sheets = sheets;
    this.marks = each(PlateMark::of);
  }

  /** The plates as large as they are: {@code jig/sheet-1}. */
  List<Pattern> nominal() {
    return patterns("", LabelBlock.NOMINAL, PlatePattern::features);
  }

  /** The way of the cutter's middle: {@code jig/sheet-1-path}. */
  List<Pattern> path(Cutter cutter) {
    return patterns("-path", "path of the middle of " + words(cutter), new CutterPath(cutter)::of);
  }

  private String words(Cutter cutter) {
    return cutter instanceof Cutter.Router router
        ? "a router bit of " + lengths.withUnit(router.tool())
        : "a laser with a kerf of " + lengths.withUnit(((Cutter.Laser) cutter).kerf());
  }

  private List<Pattern> patterns(
      String ending, String what, Function<Plate, List<Pattern.Feature>> features) {
    Map<Plate, List<Pattern.Feature>> drawn = each(features);
    return IntStream.range(0, sheets.size())
        .mapToObj(
            i ->
                new Pattern(
                    "jig/sheet-" + (i + 1) + ending,
                    title(i) + ", " + what,
                    features(sheets.get(i), drawn),
                    new LabelBlock(List.of(title(i), what)).above(sheet.height()),
                    sheets.get(i).stream().flatMap(this::mark).toList()))
        .toList();
  }

  /** Drawn once a plate, however often it is cut. */
  private <T> Map<Plate, T> each(Function<Plate, T> drawn) {
    return sheets.stream()
        .flatMap(List::stream)
        .map(Nest.Placed::plate)
        .distinct()
        .collect(Collectors.toMap(Function.identity(), drawn));
  }

  private String title(int index) {
    return "sheet %d of %d, %s x %s x %s"
        .formatted(
            index + 1,
            sheets.size(),
            lengths.withUnit(sheet.width()),
            lengths.withUnit(sheet.height()),
            lengths.withUnit(sheet.thickness()));
  }

  /** All that lies within plates before any edge, so that no plate is loose while it is cut. */
  private List<Pattern.Feature> features(
      List<Nest.Placed> plates, Map<Plate, List<Pattern.Feature>> features) {
    Outline edge = Outlines.rectangle(Point2.ORIGIN, sheet.width(), sheet.height());
    Stream<Pattern.Feature> cut =
        plates.stream()
            .flatMap(
                placed ->
                    features.get(placed.plate()).stream()
                        .map(feature -> laid(feature, placed.laid())))
            .sorted(Comparator.comparing(Pattern.Feature::operation));
    return Stream.concat(
            cut, Stream.of(new Pattern.Feature(Operation.REFERENCE, edge, Optional.empty())))
        .toList();
  }

  private static Pattern.Feature laid(Pattern.Feature feature, Laid laid) {
    return new Pattern.Feature(feature.operation(), laid.of(feature.outline()), feature.depth());
  }

  private Stream<Pattern.Stroke> mark(Nest.Placed placed) {
    return marks.get(placed.plate()).stream()
        .map(
            stroke -> new Pattern.Stroke(stroke.points().stream().map(placed.laid()::of).toList()));
  }
}
