package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Role;
import org.slatwright.design.framing.Frames;
import org.slatwright.design.sizing.Rack;

/**
 * One frame alone with every height that is marked out, on as few sheets as let all of them be
 * read: of a tall one a sheet for each part, from the floor up.
 */
final class FrameSheet implements SheetDrawing {

  static final String NAME = "frame";
  static final String TITLE = "Frame";

  private final Rack rack;
  private final Layout layout;
  private final int part;

  private FrameSheet(Rack rack, Layout layout, int part) {
    this.rack = rack;
    this.layout = layout;
    this.part = part;
  }

  /** As many sheets as it takes. */
  static List<SheetDrawing> of(Rack rack, Assembly assembly) {
    Assembly frame = first(assembly);
    FrameHeights heights = FrameHeights.of(frame);
    List<String> notes = FrameNotes.of(assembly, frame, rack.lengths());
    int parts = 1;
    Layout layout = layout(rack, frame, heights, notes, parts);
    while (!layout.isEasyToRead() && parts < heights.mostParts()) {
      parts++;
      layout = layout(rack, frame, heights, notes, parts);
    }
    Layout chosen = layout;
    return IntStream.range(0, parts)
        .<SheetDrawing>mapToObj(part -> new FrameSheet(rack, chosen, part))
        .toList();
  }

  /** All frames are alike. */
  private static Assembly first(Assembly assembly) {
    Group frame = new Frames(assembly).all().get(0);
    List<Joint> joints =
        assembly.joints().stream()
            .filter(joint -> frame.pieces().contains(joint.upright()))
            .toList();
    return new Assembly(assembly.parts(), frame.pieces(), List.of(frame), joints, List.of());
  }

  private static Layout layout(
      Rack rack, Assembly frame, FrameHeights heights, List<String> notes, int parts) {
    return FittedLayout.larger(
        rack.shop().paper(),
        sheet -> new Layout(rack, frame, heights, notes, heights.parts(parts), sheet));
  }

  @Override
  public Sheet sheet(int number, int count) {
    String title = title();
    List<View> views = new ArrayList<>();
    views.add(layout.sheet.view());
    views.addAll(layout.views(part));
    views.add(TitleBlock.of(rack, title, layout.scale, number, count).view(layout.sheet));
    String name = String.format(Locale.ROOT, "drawings/%02d-%s", number, NAME);
    return new Sheet(name, title, rack.shop().paper(), layout.sheet.landscape(), views);
  }

  private String title() {
    int parts = layout.parts.size();
    return switch (parts) {
      case 1 -> TITLE;
      case 2 -> TITLE + (part == 0 ? ", lower part" : ", upper part");
      default -> TITLE + ", part " + (part + 1) + " of " + parts;
    };
  }

  /** All parts at the largest scale at which each has room on that sheet. */
  private static final class Layout implements FittedLayout {

    private static final double PAD = 3;
    private static final double GAP = 4;

    private final LengthFormat lengths;
    private final Assembly frame;
    private final FrameHeights heights;
    private final List<Shown> parts;
    private final SheetFrame sheet;
    private final FrameSketch sketch;
    private final Columns notes;
    private final Scale scale;

    Layout(
        Rack rack,
        Assembly frame,
        FrameHeights heights,
        List<String> notes,
        List<Shown> parts,
        SheetFrame sheet) {
      this.lengths = rack.lengths();
      this.frame = frame;
      this.heights = heights;
      this.parts = parts;
      this.sheet = sheet;
      this.sketch = sketch(frame);
      this.notes =
          new Columns(
              "Notes",
              FrameNotes.ofParts(notes, parts.size()),
              sheet.width() - 2 * PAD - sketch.width() - 2 * GAP);
      this.scale = Scales.largest(rack.units(), this::fits);
    }

    /** Of the lowest rail. */
    private static FrameSketch sketch(Assembly frame) {
      Piece rail = frame.pieces(Role.RAIL).get(0);
      List<Joint> ends =
          frame.joints().stream()
              .filter(joint -> joint.rail().equals(rail))
              .sorted(Comparator.comparing(joint -> joint.upright().box().low().y()))
              .toList();
      return new FrameSketch(ends.get(0), ends.get(ends.size() - 1));
    }

    private boolean fits(Scale candidate) {
      return drawings(candidate).stream()
          .allMatch(
              views -> views.width() <= sheet.width() && views.height() <= sheet.top() - footTop());
    }

    private List<FrameViews> drawings(Scale candidate) {
      return parts.stream()
          .map(part -> new FrameViews(frame, lengths, heights, part, candidate))
          .toList();
    }

    boolean isEasyToRead() {
      return fits(scale) && drawings(scale).stream().allMatch(FrameViews::isEasyToRead);
    }

    private double footTop() {
      return sheet.bottom() + TitleBlock.HEIGHT + GAP + Math.max(notes.height(), sketch.height());
    }

    @Override
    public Scale scale() {
      return scale;
    }

    List<View> views(int part) {
      FrameViews views = drawings(scale).get(part);
      double roomAbove = sheet.top() - footTop();
      List<View> all =
          new ArrayList<>(
              views.views(
                  sheet.left() + (sheet.width() - views.width()) / 2,
                  footTop() + (roomAbove - views.height()) / 2));
      all.add(
          new View(
              "notes", "Notes", Optional.empty(), notes.figures(sheet.left() + PAD, footTop())));
      all.add(
          new View(
              "from-above",
              "Face sides, from above",
              Optional.empty(),
              sketch.figures(sheet.right() - GAP - sketch.width(), footTop())));
      return all;
    }
  }
}
