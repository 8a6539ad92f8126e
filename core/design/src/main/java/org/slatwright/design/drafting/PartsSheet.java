package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Scale;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Role;
import org.slatwright.design.drafting.BlockSheet.Heading;
import org.slatwright.design.drafting.Spans.Span;
import org.slatwright.design.sizing.Rack;

/** Every part with its holes, each at a scale of its own; many different slats as a table. */
final class PartsSheet {

  static final String NAME = "parts";
  static final String TITLE = "Parts";

  private static final int MOST_SLATS_DRAWN = 4;

  /** Least size of a part across its length on paper, in mm, before it is broken. */
  private static final double LEAST_ACROSS = 4;

  /** The most of it. */
  private static final double MOST_ACROSS = 30;

  private static final int ROWS = 24;

  private final Rack rack;
  private final LengthFormat lengths;
  private final double room;

  private PartsSheet(Rack rack, double room) {
    this.rack = rack;
    this.lengths = rack.lengths();
    this.room = room;
  }

  /** As many sheets as they take; they lie, since parts are long. */
  static List<SheetDrawing> of(Rack rack, Assembly assembly) {
    SheetFrame frame = new SheetFrame(rack.shop().paper(), true);
    PartsSheet sheet = new PartsSheet(rack, BlockSheet.width(frame));
    return BlockSheet.of(
        rack,
        new Heading(NAME, TITLE, "as stated"),
        frame,
        List.of(
            "Numbers that run from a small circle count from that end: lay a rule along the part"
                + " once and mark them all.",
            "Uprights and rails lie with the face side towards you and the face edge below: at the"
                + " left the floor end of uprights, the front end of rails.",
            "In the view of an end a thick line is the face side, and a triangle stands on the face"
                + " edge."),
        sheet.blocks(assembly.parts()));
  }

  private List<SheetBlock> blocks(List<Part> parts) {
    List<Part> slats = parts.stream().filter(part -> part.role() == Role.SLAT).toList();
    boolean table = slats.size() > MOST_SLATS_DRAWN;
    List<SheetBlock> blocks = new ArrayList<>();
    for (Part part : parts) {
      if (!table || part.role() != Role.SLAT) {
        blocks.add(drawing(part));
      }
    }
    if (table) {
      blocks.addAll(tables(slats));
    }
    return blocks;
  }

  /** Whole, or broken where it would be too thin to read and nothing lies in its middle. */
  private PartDrawing drawing(Part part) {
    Shown whole = Shown.all(0, part.shape().length().nanometres());
    Scale scale = Scales.largest(rack.units(), candidate -> fits(part, candidate, whole));
    boolean breaks = part.holes().isEmpty() && !isThick(part, scale) && scale.real() > 1;
    return breaks ? broken(part) : new PartDrawing(part, lengths, scale, whole);
  }

  private static boolean isThick(Part part, Scale scale) {
    return part.shape().width().inMm() * scale.factor() >= LEAST_ACROSS;
  }

  private boolean fits(Part part, Scale scale, Shown shown) {
    return part.shape().width().inMm() * scale.factor() <= MOST_ACROSS
        && new PartDrawing(part, lengths, scale, shown).width() <= room(part);
  }

  /** Rail and dowel are short, and have a row together. */
  private double room(Part part) {
    return part.role() == Role.UPRIGHT || part.role() == Role.SLAT ? room : room / 2;
  }

  private PartDrawing broken(Part part) {
    Scale scale = Scales.smallest(rack.units(), candidate -> isThick(part, candidate));
    long kept = Length.roundedMm(room(part) / 4 / scale.factor()).nanometres();
    long all = part.shape().length().nanometres();
    Shown ends = Shown.of(0, all, List.of(new Span(0, kept), new Span(all - kept, all)));
    return new PartDrawing(part, lengths, scale, ends);
  }

  private List<SheetBlock> tables(List<Part> slats) {
    List<SheetBlock> tables = new ArrayList<>();
    for (int from = 0; from < slats.size(); from += ROWS) {
      List<Part> some = slats.subList(from, Math.min(slats.size(), from + ROWS));
      tables.add(
          new TableBlock(
              "slats-" + (tables.size() + 1),
              tables.isEmpty() ? "Slats" : "Slats (continued)",
              PartsList.sizes(some, lengths)));
    }
    return tables;
  }
}
