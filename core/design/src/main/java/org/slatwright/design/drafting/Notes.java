package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.design.sizing.Rack;

/** What the general arrangement says in words: shelves, joints, fixing, and the caution. */
final class Notes {

  private static final double HEADING = 3.5;
  private static final double LETTERING = 2.5;
  private static final double BETWEEN = 1.6;

  private final List<List<String>> paragraphs;

  Notes(Rack rack, LengthFormat lengths, double width) {
    paragraphs =
        texts(rack, lengths).stream().map(text -> Paragraph.wrap(text, LETTERING, width)).toList();
  }

  double height() {
    double text =
        paragraphs.stream()
            .mapToDouble(lines -> Paragraph.heightOf(lines.size(), LETTERING) + BETWEEN)
            .sum();
    return HEADING * Paragraph.LINE_SPACING + text;
  }

  List<Figure> figures(double left, double top) {
    List<Figure> figures = new ArrayList<>();
    figures.add(Paragraph.text(left, top - HEADING, HEADING, "Notes", Figure.Align.START));
    double y = top - HEADING * Paragraph.LINE_SPACING;
    for (List<String> lines : paragraphs) {
      figures.addAll(Paragraph.draw(lines, left, y, LETTERING));
      y -= Paragraph.heightOf(lines.size(), LETTERING) + BETWEEN;
    }
    return figures;
  }

  private static List<String> texts(Rack rack, LengthFormat lengths) {
    return List.of(
        slats(rack, lengths),
        joint(rack, lengths),
        fixing(rack, lengths),
        "Caution: fix the rack to the wall; a tall or top-heavy rack tips. Local codes come first.");
  }

  private static String slats(Rack rack, LengthFormat lengths) {
    Rack.SlatRow row = rack.slats();
    String text =
        rack.shelves()
            + (rack.shelves() == 1 ? " shelf" : " shelves")
            + ", "
            + row.count()
            + (row.count() == 1 ? " slat deep" : " slats deep");
    if (row.count() > 1) {
      text += ", gaps " + lengths.withUnit(row.gap());
    }
    Length front = row.frontMargin();
    Length back = row.backMargin();
    if (front.isZero() && back.isZero()) {
      return text + ".";
    }
    return text
        + ", "
        + lengths.withUnit(front)
        + " clear in front, "
        + lengths.withUnit(back)
        + " behind.";
  }

  private static String joint(Rack rack, LengthFormat lengths) {
    Rack.DowelJoint joint = rack.joint();
    int count = joint.heights().size();
    return "Rail ends glued and pinned through the upright with "
        + (count == 1 ? "1 dowel " : count + " dowels ")
        + lengths.section(joint.diameter(), joint.length())
        + ", "
        + lengths.withUnit(joint.embedment())
        + " in the rail.";
  }

  private static String fixing(Rack rack, LengthFormat lengths) {
    Rack.Fixing fixing = rack.fixing();
    String kind = fixing.kind().word() + (fixing.perEnd() == 1 ? " " : "s ");
    return "Each slat: "
        + fixing.perEnd()
        + " "
        + kind
        + lengths.section(fixing.diameter(), fixing.length())
        + " at every rail.";
  }
}
