package org.slatwright.design.jig;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;
import org.slatwright.design.outline.Outlines;
import org.slatwright.design.sizing.Rack;

/**
 * Every size of the saddle, in the axes of {@link org.slatwright.api.plan.Jig}: y from the outer
 * face of the upright towards the rail, z up from the rail edge that the register rests on. The
 * sizes are drawn with the register on the upper edge, so the holes lie at negative z.
 *
 * @param allowances for fit and handling, in the units of the rack file
 * @param sheet thickness of every plate
 * @param guidePlates how many are stacked
 * @param web least width of sheet left between openings, and between an opening and an edge
 * @param inside from cheek to cheek
 * @param bottom z of the lower edge of guide plates and cheeks
 * @param top z of their upper edge
 * @param upperTab height of the upper tab of a cheek
 * @param lowerTab height of the lower one, longer, so that no guide plate goes on upside down
 * @param legEnd y where the leg of a cheek ends, beside the upright
 * @param registerStart y of the register's near edge
 * @param registerWidth how far it runs on from there
 * @param land height of the guide plates above the cheeks, where a clamp bears
 * @param guideDiameter of the guide holes; that of the bit, which runs in them
 * @param bush outside diameter of the bush that sits in all guide plates but the one on the wood
 * @param holes from the rail edge to the centre of each guide hole, nearest first
 */
record Saddle(
    Allowances allowances,
    Length sheet,
    int guidePlates,
    Length web,
    Length inside,
    Length bottom,
    Length top,
    Length upperTab,
    Length lowerTab,
    Length legEnd,
    Length registerStart,
    Length registerWidth,
    Length land,
    Length guideDiameter,
    Optional<Length> bush,
    List<Length> holes) {

  /** Of guide plates: more slide and shift on one another while they are glued. */
  static final int MOST_GUIDE_PLATES = 12;

  /** A shorter guide lets the bit lean: at least 2 1/2 diameters. */
  private static final int GUIDE_HALF_DIAMETERS = 5;

  Saddle {
    holes = List.copyOf(holes);
  }

  static Saddle of(Rack rack) {
    Allowances allowances = new Allowances(rack.units());
    Length sheet = rack.shop().jigSheet().thickness();
    Length web = within(allowances.leastWeb(), sheet, allowances.widestWeb());
    Length upperTab =
        within(allowances.shortestTab(), sheet.times(3).half(), allowances.longestTab())
            .snappedUp(allowances.finest());
    Length lowerTab = upperTab.plus(allowances.lowerTabExtra());
    Length diameter = rack.joint().diameter();
    List<Length> holes = belowUpperEdge(rack);
    Length top = sheet.plus(web);
    Length widest = rack.shop().guideBush().orElse(diameter);
    Length belowHoles = holes.get(holes.size() - 1).plus(widest.half()).plus(web).plus(top);
    Length tabs = upperTab.plus(lowerTab).plus(allowances.slotPlay().times(2));
    Length height = Length.max(belowHoles, web.times(3).plus(tabs)).snappedUp(allowances.finest());
    return new Saddle(
        allowances,
        sheet,
        guidePlates(rack),
        web,
        rack.upright().width().plus(allowances.spare()),
        top.minus(height),
        top,
        upperTab,
        lowerTab,
        rack.upright().depth().minus(allowances.glueGap()),
        rack.upright().depth().plus(allowances.glueGap()),
        Length.max(allowances.leastRegisterWidth(), sheet.times(2)),
        allowances.clampLand(),
        diameter,
        rack.shop().guideBush(),
        holes);
  }

  /** How many sheets make the least guide depth; a bush takes one to sit on. */
  static int guidePlates(Rack rack) {
    Length sheet = rack.shop().jigSheet().thickness();
    Length least = leastGuideDepth(rack.joint().diameter());
    int plates = Math.toIntExact(least.snappedUp(sheet).wholeTimes(sheet));
    return rack.shop().guideBush().isPresent() ? Math.max(2, plates) : plates;
  }

  /** How deep a guide must be to hold a bit of that diameter upright. */
  static Length leastGuideDepth(Length diameter) {
    Length twice = diameter.times(GUIDE_HALF_DIAMETERS);
    return twice.minus(twice.half());
  }

  /** How far the stack of guide plates holds the bit. */
  Length guideDepth() {
    return sheet.times(guidePlates);
  }

  /** Of the cheeks. */
  Length height() {
    return top.minus(bottom);
  }

  /** Of the guide plates, with the land for a clamp above the cheeks. */
  Length guideHeight() {
    return height().plus(land);
  }

  /** z of the top of the guide plates. */
  Length guideTop() {
    return top.plus(land);
  }

  /**
   * The window that shows the rail's edge, squared round to the outer face, along its lower side;
   * in the guide plate as it is cut, about its middle. Empty where the webs beside it would get too
   * narrow.
   */
  Optional<Outline> windowInGuide() {
    Length width = Length.min(allowances.windowWidth(), inside.minus(web.times(2)));
    Length height = allowances.windowHeight();
    Length toHole = holes.get(0).minus(bush.orElse(guideDiameter).half());
    if (width.isLessThan(height) || toHole.isLessThan(web)) {
      return Optional.empty();
    }
    Length left = guideWidth().minus(width).half().snappedDown(allowances.finest());
    return Optional.of(Outlines.rectangle(new Point2(left, bottom.negated()), width, height));
  }

  /** Of a guide plate, over both slots and the webs outside them. */
  Length guideWidth() {
    return overCheeks().plus(web.times(2));
  }

  /** From the outside of one cheek to that of the other. */
  Length overCheeks() {
    return inside.plus(sheet.times(2));
  }

  /** Left between a cheek and the upright when the jig sits in the middle. */
  Length clearance() {
    return allowances.spare().half();
  }

  /** y where the cheeks end, a web behind the slot of the register. */
  Length cheekEnd() {
    return registerStart.plus(registerWidth).plus(allowances.slotPlay()).plus(web);
  }

  /** z of the underside of the cheeks' arms, a web below the slot of the register. */
  Length armUnderside() {
    return web.plus(allowances.slotPlay()).negated();
  }

  /** From the upper edge of the rail down to each hole, nearest first. */
  static List<Length> belowUpperEdge(Rack rack) {
    return rack.joint().heights().stream()
        .map(height -> rack.rail().height().minus(height))
        .sorted()
        .toList();
  }

  private static Length within(Length least, Length wanted, Length most) {
    return Length.min(most, Length.max(least, wanted));
  }
}
