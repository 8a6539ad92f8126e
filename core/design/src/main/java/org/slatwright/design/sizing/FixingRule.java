package org.slatwright.design.sizing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Fastener;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.Section;

/**
 * Which brad or screw holds the slats down, of those that are sold: long enough to hold, not out
 * below, and not so thick that it splits them.
 */
final class FixingRule {

  private static final String KEY = "joint.fixing.length";

  /**
   * Diameters in the rail, to hold fully: Wood Handbook, FPL-GTR-282, chapter 8 (of screws from
   * memory), of brads those for light wood.
   */
  private static final int SCREW_DEPTH = 7;

  private static final int BRAD_DEPTH = 14;

  private final Worksheet sheet;
  private final RackFile.Fixing asked;
  private final Length slatThickness;
  private final Length through;
  private final Length diameter;

  private FixingRule(Worksheet sheet, Section rail, Section slat, Length dowel) {
    this.sheet = sheet;
    this.asked = sheet.file().joint().fixing();
    this.slatThickness = slat.first();
    this.through = slatThickness.plus(rail.second());
    this.diameter =
        asked
            .diameter()
            .map(Given::value)
            .orElseGet(() -> isBrad() ? usualBrad() : usualScrew(room(rail, slat, dowel)));
  }

  /**
   * The one to use.
   *
   * @param dowel how thick it is, as far as that is known
   */
  static Optional<Rack.Fixing> choose(
      Worksheet sheet, Section rail, Section slat, Optional<Length> dowel) {
    FixingRule rule = new FixingRule(sheet, rail, slat, dowel.orElse(Length.ZERO));
    Optional<Length> length = rule.asked.length().map(rule::checked).orElseGet(rule::chosen);
    return length.map(
        l -> new Rack.Fixing(rule.asked.kind(), l, rule.diameter, rule.asked.perEnd()));
  }

  private ScrewRoom room(Section rail, Section slat, Length dowel) {
    boolean meets =
        sheet.file().rack().bays() > 1
            && sheet.file().slats().run().value() == RackFile.Run.PER_BAY;
    return new ScrewRoom(rail.first(), dowel, slat.second(), asked.perEnd(), meets);
  }

  /** The thinnest that is sold so long, or the longest where none is. */
  private Length usualBrad() {
    List<SoldFixing> sold = sold();
    return sold.stream()
        .filter(brad -> !lengthOf(brad).isMoreThan(brad.longest()))
        .findFirst()
        .orElse(sold.get(sold.size() - 1))
        .diameter();
  }

  /**
   * The thickest that neither splits the wood nor ends too soon, up to what is usual; a thicker one
   * where only that is long enough.
   */
  private Length usualScrew(ScrewRoom room) {
    Length usual = SoldFixing.usual(asked.kind(), sheet.file().units());
    List<Length> deep =
        sold().stream().filter(this::isDeepEnough).map(SoldFixing::diameter).toList();
    List<Length> fit = deep.stream().filter(room::takes).toList();
    return fit.stream()
        .filter(thick -> !thick.isMoreThan(usual))
        .reduce((thinner, thicker) -> thicker)
        .or(() -> Stream.concat(fit.stream(), deep.stream()).findFirst())
        .orElseGet(this::reaching);
  }

  private boolean isDeepEnough(SoldFixing screw) {
    Length length = Length.min(lengthOf(screw), screw.longest());
    return !atFullDepth(screw.diameter()).isMoreThan(length);
  }

  /** The thinnest that reaches the rail at all, or the thickest. */
  private Length reaching() {
    List<SoldFixing> sold = sold();
    return sold.stream()
        .filter(screw -> screw.longest().isMoreThan(slatThickness))
        .findFirst()
        .orElse(sold.get(sold.size() - 1))
        .diameter();
  }

  private Length lengthOf(SoldFixing sold) {
    return asked.length().map(Given::value).orElseGet(() -> fitting(sold.diameter()));
  }

  private List<SoldFixing> sold() {
    return SoldFixing.of(asked.kind(), sheet.file().units());
  }

  private boolean isBrad() {
    return asked.kind() == Fastener.Kind.BRAD;
  }

  private Optional<Length> checked(Given<Length> length) {
    String fixing = "a " + asked.kind().word() + " of " + sheet.show(length.value());
    if (length.value().isMoreThan(through)) {
      return sheet.complain(
          length.place(),
          "%s comes out below: slat and rail are %s together"
              .formatted(fixing, sheet.show(through)),
          changes());
    }
    if (!length.value().isMoreThan(slatThickness)) {
      return sheet.complain(
          length.place(),
          "%s does not reach the rail through a slat of %s"
              .formatted(fixing, sheet.show(slatThickness)),
          changes());
    }
    return Optional.of(length.value());
  }

  private Optional<Length> chosen() {
    Length usual = usual();
    if (!usual.isMoreThan(slatThickness)) {
      return fitting().isMoreThan(slatThickness) ? tooShortAsSold(usual) : tooLow();
    }
    if (isBrad() && usual.isLessThan(fitting())) {
      warnOfLongestBrad(usual);
    } else {
      sheet.note(
          KEY,
          "%ss of %s: %s".formatted(asked.kind().word(), sheet.show(usual), why(usual)),
          "give " + KEY + " if yours are others");
    }
    return Optional.of(usual);
  }

  private String why(Length usual) {
    if (usual.isLessThan(fitting())) {
      return "as long as they are sold so thick";
    }
    if (usual.isLessThan(wanted(diameter))) {
      return "as long as slat and rail take";
    }
    return usual.equals(byTheSlat())
        ? "about 2 1/2 times the slats' thickness"
        : fullDepth() + " times their thickness in the rail";
  }

  private Optional<Length> tooLow() {
    return sheet.complain(
        sheet.place(KEY),
        "no usual length of %s holds slats of %s on rails so low (%s together): give %s"
            .formatted(asked.kind().word(), sheet.show(slatThickness), sheet.show(through), KEY));
  }

  private Optional<Length> tooShortAsSold(Length longest) {
    return sheet.complain(
        sheet.place(KEY),
        "the longest brads sold, %s, do not reach the rail through slats of %s"
            .formatted(sheet.show(longest), sheet.show(slatThickness)),
        new Problem.Change("joint.fixing.kind=screw", "screws in place of brads"));
  }

  private void warnOfLongestBrad(Length longest) {
    sheet.warn(
        KEY,
        "brads of %s, and no longer ones of %s are sold: %s would hold slats of %s better"
            .formatted(
                sheet.show(longest),
                sheet.show(diameter),
                sheet.show(fitting()),
                sheet.show(slatThickness)),
        "use screws: joint.fixing.kind=screw");
  }

  /** What fits, if it is sold. */
  private Length usual() {
    return Length.min(fitting(), longest());
  }

  private Length longest() {
    return SoldFixing.asThickAs(diameter, asked.kind(), sheet.file().units()).longest();
  }

  private Length fitting() {
    return fitting(diameter);
  }

  /** Some wood is left below the point. */
  private Length fitting(Length thick) {
    return Length.min(wanted(thick), through.minus(step()).snappedDown(step()));
  }

  private Length wanted(Length thick) {
    return Length.max(byTheSlat(), atFullDepth(thick).snappedUp(step()));
  }

  /** Common practice, no source: 2 1/2 times its thickness. */
  private Length byTheSlat() {
    return slatThickness.times(5).half().snappedUp(step());
  }

  private Length atFullDepth(Length thick) {
    return slatThickness.plus(thick.times(fullDepth()));
  }

  private int fullDepth() {
    return isBrad() ? BRAD_DEPTH : SCREW_DEPTH;
  }

  private Length step() {
    return SoldFixing.step(sheet.file().units());
  }

  private List<Problem.Change> changes() {
    Length usual = usual();
    return usual.isMoreThan(slatThickness)
        ? List.of(sheet.change(KEY, usual, asked.kind().word() + "s of " + sheet.show(usual)))
        : List.of();
  }
}
