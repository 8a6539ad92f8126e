package org.slatwright.design.sizing;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Fastener;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.Section;

/** Which brad or screw holds the slats down: long enough to hold, and not out below. */
final class FixingRule {

  private static final String KEY = "joint.fixing.length";

  private final Worksheet sheet;
  private final RackFile.Fixing asked;
  private final Length slatThickness;
  private final Length through;

  private FixingRule(Worksheet sheet, Length railHeight, Length slatThickness) {
    this.sheet = sheet;
    this.asked = sheet.file().joint().fixing();
    this.slatThickness = slatThickness;
    this.through = slatThickness.plus(railHeight);
  }

  static Optional<Rack.Fixing> choose(Worksheet sheet, Section rail, Length slatThickness) {
    FixingRule rule = new FixingRule(sheet, rail.second(), slatThickness);
    Optional<Length> length = rule.asked.length().map(rule::checked).orElseGet(rule::chosen);
    return length.map(
        l -> new Rack.Fixing(rule.asked.kind(), l, rule.diameter(l), rule.asked.perEnd()));
  }

  private Length diameter(Length length) {
    return asked.diameter().map(Given::value).orElseGet(() -> usualDiameter(length));
  }

  /** The thinnest brad that is sold so long; of screws 4 mm or 5/32 in: common practice. */
  private Length usualDiameter(Length length) {
    return asked.kind() == Fastener.Kind.BRAD
        ? Brad.reaching(length, sheet.file().units()).diameter()
        : sheet.metricOrInch(Length.mm(4), Length.inches(5, 32));
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
    if (usual.isLessThan(fitting())) {
      warnOfLongestBrad(usual);
    } else {
      String why =
          usual.equals(wanted())
              ? "about 2 1/2 times the slats' thickness"
              : "as long as slat and rail take";
      sheet.note(
          KEY,
          "%ss of %s: %s".formatted(asked.kind().word(), sheet.show(usual), why),
          "give " + KEY + " if yours are others");
    }
    return Optional.of(usual);
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
        new Problem.Change("joint.fixing.kind=screw", "screws of " + sheet.show(fitting())));
  }

  private void warnOfLongestBrad(Length longest) {
    sheet.warn(
        KEY,
        "brads of %s, and no longer ones of %s are sold: %s would hold slats of %s better"
            .formatted(
                sheet.show(longest),
                sheet.show(diameter(longest)),
                sheet.show(fitting()),
                sheet.show(slatThickness)),
        "use screws: joint.fixing.kind=screw");
  }

  /** What fits, if it is sold. */
  private Length usual() {
    return asked.kind() == Fastener.Kind.BRAD ? Length.min(fitting(), longestBrad()) : fitting();
  }

  private Length longestBrad() {
    Unit units = sheet.file().units();
    return asked
        .diameter()
        .map(given -> Brad.asThickAs(given.value(), units))
        .orElse(Brad.longest(units))
        .longest();
  }

  /** Common practice, no source: 2 1/2 times the slat, and some wood left below the point. */
  private Length fitting() {
    return Length.min(wanted(), through.minus(step()).snappedDown(step()));
  }

  private Length wanted() {
    return slatThickness.times(5).half().snappedUp(step());
  }

  private Length step() {
    return sheet.metricOrInch(Length.mm(5), Length.inches(1, 4));
  }

  private List<Problem.Change> changes() {
    Length usual = usual();
    return usual.isMoreThan(slatThickness)
        ? List.of(sheet.change(KEY, usual, asked.kind().word() + "s of " + sheet.show(usual)))
        : List.of();
  }
}
