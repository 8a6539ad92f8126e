package org.slatwright.design.jig;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.sizing.Rack;
import org.slatwright.design.sizing.Spelling;

/** Finds out whether stock, dowel and sheet allow a jig, and says in numbers why not. */
final class JigLimits {

  private static final String SUBJECT = "drilling jig";
  private static final String SOURCE = "common practice, no source";

  private final Rack rack;
  private final Allowances allowances;
  private final LengthFormat lengths;

  JigLimits(Rack rack) {
    this.rack = rack;
    this.allowances = new Allowances(rack.units());
    this.lengths = rack.lengths();
  }

  /** What forbids a saddle on this stock before any plate is drawn. */
  List<Finding> onStock() {
    return Stream.of(
            railTooWide(), uprightTooShallow(), sheetTooThin(), sheetTooThick(), bushTooThin())
        .flatMap(Optional::stream)
        .toList();
  }

  /** The plates whose narrowest web is below {@code least}. */
  List<Finding> onPlates(List<Plate> plates, Length least) {
    return plates.stream().flatMap(plate -> tooNarrow(plate, least).stream()).toList();
  }

  private Optional<Finding> railTooWide() {
    Length rail = rack.rail().width();
    Length upright = rack.upright().width();
    return rail.isMoreThan(upright)
        ? warning(
            "the rail is "
                + show(rail)
                + " wide, the upright "
                + show(upright)
                + ": the cheeks cannot straddle both",
            "rails at most " + show(upright) + " wide")
        : Optional.empty();
  }

  private Optional<Finding> uprightTooShallow() {
    Length depth = rack.upright().depth();
    Length least = allowances.glueGap().plus(allowances.cornerRadius().times(2));
    return depth.isLessThan(least)
        ? warning(
            "the upright is " + show(depth) + " deep; the cheeks need " + show(least),
            "uprights at least " + show(least) + " deep")
        : Optional.empty();
  }

  private Optional<Finding> sheetTooThin() {
    int plates = Saddle.guidePlates(rack);
    Length depth = Saddle.leastGuideDepth(rack.joint().diameter());
    return plates > Saddle.MOST_GUIDE_PLATES
        ? warning(
            "a guide "
                + show(depth)
                + " deep (2 1/2 dowel diameters) takes "
                + plates
                + " plates of "
                + show(rack.shop().jigSheet().thickness())
                + " sheet; more than "
                + Saddle.MOST_GUIDE_PLATES
                + " do not stay in line",
            "set shop.jig-sheet="
                + new Spelling(rack.units())
                    .length(depth.dividedBy(Saddle.MOST_GUIDE_PLATES).snappedUp(rack.increment())))
        : Optional.empty();
  }

  private Optional<Finding> sheetTooThick() {
    return rack.shop().jigSheet().thickness().isMoreThan(allowances.thickestSheet())
        ? warning(
            "its plates key together in sheet of at most "
                + show(allowances.thickestSheet())
                + ", shop.jig-sheet is "
                + show(rack.shop().jigSheet().thickness()),
            "set shop.jig-sheet=" + new Spelling(rack.units()).length(allowances.thickestSheet()))
        : Optional.empty();
  }

  private Optional<Finding> bushTooThin() {
    Length bit = rack.joint().diameter();
    Length least = bit.plus(allowances.leastBushWall().times(2));
    return rack.shop()
        .guideBush()
        .filter(bush -> bush.isLessThan(least))
        .flatMap(
            bush ->
                warning(
                    "a guide bush of "
                        + show(bush)
                        + " outside leaves no wall around a bit of "
                        + show(bit),
                    "a bush of at least " + show(least) + " outside"));
  }

  private Optional<Finding> tooNarrow(Plate plate, Length least) {
    return Webs.of(plate).stream()
        .findFirst()
        .filter(web -> web.isNarrowerThan(least))
        .flatMap(web -> warning(narrowWeb(plate, web, least), widen(web, least)));
  }

  private String narrowWeb(Plate plate, Webs.Web web, Length least) {
    return "plate "
        + plate.mark()
        + " ("
        + plate.name()
        + ") would keep "
        + show(web.width())
        + " of sheet between "
        + web.between()
        + "; it takes "
        + show(least);
  }

  /** A slot lies beside the upright, so half of what the upright is widened by is gained. */
  private String widen(Webs.Web web, Length least) {
    Length lacking = least.minus(web.width());
    return web.between().equals(Webs.TWO_GUIDE_HOLES)
        ? "dowels " + show(markedOut(lacking)) + " farther apart, or one dowel a joint"
        : "uprights "
            + show(markedOut(lacking.times(2)))
            + " wider, thinner dowels"
            + (rack.shop().guideBush().isPresent() ? ", a thinner guide bush" : "")
            + ", or thinner sheet for the jig";
  }

  /** The least measure of a rule that is enough, not counting what {@link Webs} rounds by. */
  private Length markedOut(Length length) {
    return length.minus(Webs.STEP).snappedUp(allowances.finest());
  }

  private static Optional<Finding> warning(String message, String advice) {
    return Optional.of(
        new Finding(
            Finding.Severity.WARNING,
            "jig",
            SUBJECT,
            "no jig can be cut from sheet: " + message,
            "",
            "",
            advice,
            SOURCE));
  }

  private String show(Length length) {
    return lengths.withUnit(length);
  }
}
