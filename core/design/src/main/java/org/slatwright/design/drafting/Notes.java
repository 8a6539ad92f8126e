package org.slatwright.design.drafting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Role;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.ShelfRow;

/** What the general arrangement says in words: shelves, joints, fixing, and the caution. */
final class Notes {

  static final String CAUTION =
      "Caution: fix the rack to the wall; a tall or top-heavy rack tips. Local codes come first.";

  private Notes() {}

  /** A sentence or two each, most telling first, the caution last. */
  static List<String> of(Rack rack, Assembly assembly, LengthFormat lengths) {
    List<String> texts = new ArrayList<>();
    texts.add(shelves(rack, lengths));
    if (!rack.openings().isEmpty()) {
      texts.add(openings(rack, lengths));
    }
    texts.add(slats(rack, assembly, lengths));
    texts.add(joint(rack, lengths));
    texts.add(fixing(rack, lengths));
    texts.add(CAUTION);
    return texts;
  }

  private static String openings(Rack rack, LengthFormat lengths) {
    List<String> heights = new ArrayList<>();
    for (int i = 0; i < rack.openings().size(); ) {
      int alike = HeightSteps.alike(rack.openings(), i);
      String height = lengths.withUnit(rack.openings().get(i));
      heights.add(alike == 1 ? height : alike + " × " + height);
      i += alike;
    }
    String said = "Clear heights from the floor up: " + String.join(", ", heights) + ".";
    return HeightSteps.isTall(rack) ? said + " Every height is on the frame sheet." : said;
  }

  private static String shelves(Rack rack, LengthFormat lengths) {
    Length rail = rack.rail().height();
    Length slat = rack.slats().thickness();
    return count(rack.shelves(), "shelf", "shelves")
        + (rack.shelves() == 1 ? ", " : ", each ")
        + lengths.number(rail.plus(slat))
        + " high: rail "
        + lengths.number(rail)
        + ", slat "
        + lengths.withUnit(slat)
        + ".";
  }

  private static String slats(Rack rack, Assembly assembly, LengthFormat lengths) {
    List<Lie> lies = rack.rows().stream().map(Lie::of).distinct().toList();
    String marks =
        assembly.parts().stream()
            .filter(part -> part.role() == Role.SLAT)
            .map(Part::mark)
            .collect(Collectors.joining(", "));
    return lies.size() == 1
        ? alike(lies.get(0), marks, lengths)
        : unlike(rack.rows(), marks, lengths);
  }

  /**
   * How a row lies.
   *
   * @param widths from the front back
   */
  private record Lie(List<Length> widths, Length gap, Length frontMargin, Length backMargin) {
    static Lie of(ShelfRow row) {
      return new Lie(
          row.slats().stream().map(ShelfRow.Slat::width).toList(),
          row.gap(),
          row.frontMargin(),
          row.backMargin());
    }
  }

  private static String alike(Lie row, String marks, LengthFormat lengths) {
    List<String> said = new ArrayList<>();
    said.add(count(row.widths().size(), "slat", "slats") + " (" + marks + ") to a shelf");
    if (row.widths().size() > 1) {
      said.add("gaps " + lengths.withUnit(row.gap()));
    }
    if (row.frontMargin().isPositive()) {
      said.add(lengths.withUnit(row.frontMargin()) + " left free in front");
    }
    if (row.backMargin().isPositive()) {
      said.add(lengths.withUnit(row.backMargin()) + " left free behind");
    }
    return String.join(", ", said) + ".";
  }

  private static String unlike(List<ShelfRow> rows, String marks, LengthFormat lengths) {
    List<Length> gaps =
        rows.stream()
            .filter(row -> row.slats().size() > 1)
            .map(ShelfRow::gap)
            .distinct()
            .sorted()
            .toList();
    return "Slats ("
        + marks
        + ") of each shelf as the order of cutting has them"
        + (gaps.isEmpty() ? "" : ", gaps " + span(gaps, lengths))
        + "; what they leave of the rails is free in front and behind, half each.";
  }

  private static String span(List<Length> rising, LengthFormat lengths) {
    String most = lengths.withUnit(rising.get(rising.size() - 1));
    return rising.size() == 1 ? most : lengths.number(rising.get(0)) + " to " + most;
  }

  private static String joint(Rack rack, LengthFormat lengths) {
    Rack.DowelJoint joint = rack.joint();
    return "Rail ends (R) glued, and pinned through the upright (U) with "
        + count(joint.heights().size(), "dowel", "dowels")
        + " (D) ø "
        + lengths.section(joint.diameter(), joint.length())
        + ", "
        + lengths.withUnit(joint.embedment())
        + " in the rail; holes "
        + lengths.withUnit(joint.holeDepth())
        + " deep leave room for glue.";
  }

  private static String fixing(Rack rack, LengthFormat lengths) {
    Rack.Fixing fixing = rack.fixing();
    String kind = fixing.kind().word();
    return count(fixing.perEnd(), kind, kind + "s")
        + " "
        + lengths.section(fixing.diameter(), fixing.length())
        + " where a slat bears on a rail.";
  }

  private static String count(int number, String one, String many) {
    return number + " " + (number == 1 ? one : many);
  }
}
