package org.slatwright.design.jig;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.design.sizing.Rack;

/**
 * Every size of the saddle, in the axes of {@link org.slatwright.api.plan.Jig}: y from the outer
 * face of the upright towards the rail, z up from the rail edge that the register rests on. The
 * sizes are drawn with the register on the upper edge, so the holes lie at negative z.
 *
 * <p>The clearances, webs and tabs are this project's own workshop rules: common practice, no
 * source.
 *
 * @param sheet thickness of every plate
 * @param guidePlates how many are stacked
 * @param web least width of sheet left between openings, and between an opening and an edge
 * @param halfInside from the middle of the upright to the inner side of a cheek
 * @param bottom z of the lower edge of guide plates and cheeks
 * @param top z of their upper edge
 * @param upperTab height of the upper tab of a cheek
 * @param lowerTab height of the lower one, longer, so that no guide plate goes on upside down
 * @param legEnd y where the leg of a cheek ends, beside the upright
 * @param registerStart y of the register's near edge
 * @param registerWidth how far it runs on from there
 * @param guideDiameter of the guide holes; that of the bit, which runs in them
 * @param holes from the rail edge to the centre of each guide hole, nearest first
 */
record Saddle(
    Length sheet,
    int guidePlates,
    Length web,
    Length halfInside,
    Length bottom,
    Length top,
    Length upperTab,
    Length lowerTab,
    Length legEnd,
    Length registerStart,
    Length registerWidth,
    Length guideDiameter,
    List<Length> holes) {

  /**
   * Between jig and stock on each side: planed or sanded stock varies by a tenth or two along its
   * length. Upright and rail are drilled as one, so being off the middle by as much harms nothing.
   */
  static final Length CLEARANCE = Length.roundedMm(0.2);

  /**
   * By which a slot is longer than the tab in it; across, a glued tab fills it. The slot of the
   * loose register has the same play below it, since the saddle bears down on the register.
   */
  static final Length SLOT_PLAY = Length.roundedMm(0.1);

  /** To take hold of the register by. */
  static final Length GRIP = Length.mm(12);

  /** Thicker is no sheet, and its tabs would fill the cheeks. */
  static final Length THICKEST_SHEET = Length.mm(25);

  /** Of the corners that a hand meets. */
  static final Length CORNER_RADIUS = Length.mm(3);

  /** Kept off the glue line between upright and rail on both sides, where glue squeezes out. */
  static final Length GLUE_GAP = Length.mm(3);

  /** Of guide plates: more slide and shift on one another while they are glued. */
  static final int MOST_GUIDE_PLATES = 12;

  /** A shorter guide lets the bit lean: at least 2 1/2 diameters. */
  private static final int GUIDE_HALF_DIAMETERS = 5;

  /** Below this, plywood breaks out beside a slot. */
  private static final Length LEAST_WEB = Length.mm(4);

  /** Enough in any sheet. */
  private static final Length WIDEST_WEB = Length.mm(10);

  private static final Length SHORTEST_TAB = Length.mm(8);
  private static final Length LONGEST_UPPER_TAB = Length.mm(20);
  private static final Length LOWER_TAB_EXTRA = Length.mm(4);

  /** Long enough on the rail edge not to rock, short enough not to feel a bow in it. */
  private static final Length LEAST_REGISTER_WIDTH = Length.mm(20);

  Saddle {
    holes = List.copyOf(holes);
  }

  static Saddle of(Rack rack) {
    Length sheet = rack.jigSheet();
    Length web = within(LEAST_WEB, sheet, WIDEST_WEB);
    Length upperTab = within(SHORTEST_TAB, sheet.times(3).half(), LONGEST_UPPER_TAB);
    Length lowerTab = upperTab.plus(LOWER_TAB_EXTRA);
    Length diameter = rack.joint().diameter();
    List<Length> holes = belowUpperEdge(rack);
    Length top = sheet.plus(web);
    Length belowHoles = holes.get(holes.size() - 1).plus(halfUp(diameter)).plus(web).plus(top);
    Length forTabs = web.times(3).plus(upperTab).plus(lowerTab).plus(SLOT_PLAY.times(2));
    return new Saddle(
        sheet,
        guidePlates(rack),
        web,
        halfUp(rack.upright().width()).plus(CLEARANCE),
        top.minus(Length.max(belowHoles, forTabs)),
        top,
        upperTab,
        lowerTab,
        rack.upright().depth().minus(GLUE_GAP),
        rack.upright().depth().plus(GLUE_GAP),
        Length.max(LEAST_REGISTER_WIDTH, sheet.times(2)),
        diameter,
        holes);
  }

  /** How many sheets make the least guide depth. */
  static int guidePlates(Rack rack) {
    Length least = leastGuideDepth(rack.joint().diameter());
    return Math.toIntExact(least.snappedUp(rack.jigSheet()).wholeTimes(rack.jigSheet()));
  }

  /** How deep a guide must be to hold a bit of that diameter upright. */
  static Length leastGuideDepth(Length diameter) {
    return halfUp(diameter.times(GUIDE_HALF_DIAMETERS));
  }

  /** How far the stack of guide plates holds the bit. */
  Length guideDepth() {
    return sheet.times(guidePlates);
  }

  /** Of guide plates and cheeks. */
  Length height() {
    return top.minus(bottom);
  }

  /** Of a guide plate, over both slots and the webs outside them. */
  Length guideWidth() {
    return halfInside.plus(sheet).plus(web).times(2);
  }

  /** y where the cheeks end, a web behind the slot of the register. */
  Length cheekEnd() {
    return registerStart.plus(registerWidth).plus(SLOT_PLAY.half()).plus(web);
  }

  /** z of the underside of the cheeks' arms, a web below the slot of the register. */
  Length armUnderside() {
    return web.plus(SLOT_PLAY).negated();
  }

  private static List<Length> belowUpperEdge(Rack rack) {
    return rack.joint().heights().stream()
        .map(height -> rack.rail().height().minus(height))
        .sorted()
        .toList();
  }

  private static Length within(Length least, Length wanted, Length most) {
    return Length.min(most, Length.max(least, wanted));
  }

  private static Length halfUp(Length length) {
    return length.minus(length.half());
  }
}
