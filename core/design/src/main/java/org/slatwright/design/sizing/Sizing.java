package org.slatwright.design.sizing;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.plan.Chain;
import org.slatwright.design.boards.BoardChoice;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.RackFileException;
import org.slatwright.design.rackfile.Section;

/** Closes every dimension chain of a rack. */
public final class Sizing {

  private final Worksheet sheet;
  private final Section upright;
  private final Section rail;
  private final Optional<Section> slat;
  private final Things things;
  private final Optional<HeightChain> height;
  private final Optional<SlatRowChain> row;
  private final Optional<WidthChain> width;
  private final Optional<DowelPattern> pattern;
  private final Optional<DowelChain> dowel;
  private final Optional<Rack.Fixing> fixing;

  /**
   * Solves what can be solved, each after what it needs, so that independent problems all come to
   * light at once.
   */
  private Sizing(RackFile file) {
    sheet = new Worksheet(file);
    upright = Sections.upright(sheet);
    rail = Sections.rail(sheet);
    slat = Sections.slat(sheet);
    things = Things.lie(sheet, slat.flatMap(s -> rowSizes(s, Length.ZERO).longestRail()));
    height = slat.flatMap(s -> HeightChain.close(sheet, things, rail.second(), s.first()));
    pattern = DowelPattern.choose(sheet, upright, rail, ends());
    row = slat.flatMap(s -> SlatRowChain.close(sheet, things, rowSizes(s, leastRail())));
    width = WidthChain.close(sheet, things, rail.first(), slat.map(Section::second));
    dowel = diameter().flatMap(d -> railLength().flatMap(r -> dowel(d, r)));
    fixing = slat.flatMap(s -> FixingRule.choose(sheet, rail, s, diameter()));
    dowel.map(DowelChain::length).ifPresent(new LongestStock(sheet)::checkDowels);
    checkBoards();
  }

  /**
   * The rack that the file asks for, with nothing left unknown: lengths that were given stand as
   * they are, the others are solved and snap to the increment.
   *
   * @throws RackFileException with everything that keeps the rack from closing, and each single
   *     change that would put it right
   */
  public static Rack solve(RackFile file) throws RackFileException {
    Sizing sizing = of(file);
    Trials trials = new Trials(file);
    if (!sizing.closes()) {
      throw new RackFileException(trials.proven(sizing.problems()));
    }
    sizing.tellMisfits(trials);
    return sizing.rack();
  }

  /** From the foot and the top of an upright to the nearest rail; of heights that closed. */
  private Optional<Length> ends() {
    return height.map(HeightChain::heights).flatMap(h -> slat.map(s -> endsOf(h, s)));
  }

  private static Length endsOf(Heights heights, Section slat) {
    return Length.min(heights.foot().length(), heights.top().length().plus(slat.first()));
  }

  /** Where everything else has closed: how many slats there are is not known before. */
  private void checkBoards() {
    if (sheet.problems().isEmpty()) {
      row.flatMap(SlatRowChain::even)
          .ifPresent(
              even ->
                  new EnoughBoards(sheet, slat.orElseThrow().second())
                      .check(width.orElseThrow().slatLengths(), even.count() * shelves()));
    }
  }

  private int shelves() {
    return height.orElseThrow().heights().openings().size() + 1;
  }

  /** As far as it can be solved. */
  static Sizing of(RackFile file) {
    return new Sizing(file);
  }

  boolean closes() {
    return problems().isEmpty();
  }

  /** What keeps it from closing, with changes that are proven for one chain only. */
  List<Problem> problems() {
    return sheet.problems();
  }

  /** What the rack must hold and does not; empty where that is not known yet. */
  List<Misfit> misfits() {
    return closes() ? room().misfits(things) : List.of();
  }

  private void tellMisfits(Trials trials) {
    SlatRowChain slats = row.orElseThrow();
    RowSizes asGiven = rowSizes(slat.orElseThrow(), slats.sizes().leastRail());
    RoomChanges changes = new RoomChanges(sheet, height.orElseThrow().heights(), asGiven);
    new MisfitFindings(sheet, changes, trials).tell(misfits());
  }

  private Room room() {
    return new Room(
        width.orElseThrow().interior(),
        row.orElseThrow().rail().length(),
        height.orElseThrow().heights().openings());
  }

  private RowSizes rowSizes(Section slatSection, Length leastRail) {
    return RowSizes.of(sheet, Sections.usualWidth(sheet, slatSection), leastRail);
  }

  private Length leastRail() {
    return diameter()
        .map(d -> DowelChain.shortestRail(sheet, d, upright.second()))
        .orElse(Length.ZERO);
  }

  /** As given where the pattern has a problem of its own, so that the dowel's own show too. */
  private Optional<Length> diameter() {
    Optional<Length> given = sheet.file().timber().dowel().diameter().map(Given::value);
    return pattern.map(DowelPattern::diameter).or(() -> given);
  }

  /** As given where the row has a problem of its own. */
  private Optional<Length> railLength() {
    Optional<Length> given = sheet.file().rack().railLength().map(Given::value);
    return row.map(chain -> chain.rail().length()).or(() -> given);
  }

  private Optional<DowelChain> dowel(Length diameter, Length railLength) {
    return DowelChain.close(sheet, diameter, upright.second(), railLength);
  }

  private Rack rack() {
    RackFile file = sheet.file();
    Heights heights = height.orElseThrow().heights();
    Timbers timbers = Timbers.choose(sheet);
    Length railLength = row.orElseThrow().rail().length();
    Optional<BoardChoice> choice = chosen();
    Rack.SlatRow slats = choice.map(this::slats).orElseGet(this::evenSlats);
    return new Rack(
        file.title().value(),
        file.units(),
        file.increment(),
        file.feetAbove(),
        timbers.name(),
        !file.timber().slats().boards().isEmpty(),
        timbers.frame(),
        timbers.slats(),
        ShelfLoad.choose(sheet, shelfWidth(), railLength),
        file.load().climate().value(),
        file.rack().stands() == RackFile.Stands.ANCHORED,
        file.rack().brace() == RackFile.Brace.BACK,
        new Rack.Upright(upright.first(), upright.second(), heights.upright().length()),
        new Rack.Rail(rail.first(), rail.second(), railLength),
        file.rack().bays(),
        width.orElseThrow().interior(),
        heights.foot().length(),
        heights.openings(),
        heights.top().length(),
        slats,
        joint(),
        fixing.orElseThrow(),
        shop(file.shop()),
        SuppliesOf.file(file),
        choice,
        chains(rows(choice, slats)),
        room().fits(things),
        sheet.notes());
  }

  private static Rack.Shop shop(RackFile.Shop shop) {
    Section sheet = shop.sheetSize().value();
    return new Rack.Shop(
        shop.bitReach().map(Given::value),
        new Rack.JigSheet(shop.jigSheet().value(), sheet.first(), sheet.second()),
        shop.guideBush().map(Given::value),
        shop.cutter().map(Sizing::cutter),
        shop.paper(),
        shop.printMargin());
  }

  private static Rack.Cutter cutter(RackFile.Cutter cutter) {
    return cutter instanceof RackFile.Cutter.Laser laser
        ? new Rack.Cutter.Laser(laser.kerf())
        : router((RackFile.Cutter.Router) cutter);
  }

  private static Rack.Cutter router(RackFile.Cutter.Router router) {
    return new Rack.Cutter.Router(router.tool(), router.relieved());
  }

  private Length shelfWidth() {
    return width.orElseThrow().interior().times(sheet.file().rack().bays());
  }

  /** Chosen once, when all else is settled: a choice takes its time. */
  private Optional<BoardChoice> chosen() {
    if (!Sections.areOfBoards(sheet)) {
      return Optional.empty();
    }
    SlatRowChain chain = row.orElseThrow();
    BoardRows rows = BoardRows.on(sheet, chain.sizes(), chain.rail().length());
    BoardChoice choice = rows.choose(shelves(), width.orElseThrow().slatLengths());
    new ChosenRows(rows, choice).tell();
    return Optional.of(choice);
  }

  private static List<ShelfRow> rows(Optional<BoardChoice> choice, Rack.SlatRow slats) {
    return choice
        .map(chosen -> chosen.rows().stream().map(ShelfRow::chosen).toList())
        .orElseGet(() -> List.of(ShelfRow.even(0, 0, slats)));
  }

  private Rack.SlatRow evenSlats() {
    RowSizes.Row even = row.flatMap(SlatRowChain::even).orElseThrow();
    return slats(
        slat.orElseThrow().second(),
        even.count(),
        even.gap().length(),
        even.frontMargin(),
        even.backMargin());
  }

  /** Of the top shelf, the widest slat of all. */
  private Rack.SlatRow slats(BoardChoice choice) {
    BoardChoice.Row top = choice.rows().get(choice.rows().size() - 1);
    Length widest =
        choice.rows().stream()
            .flatMap(chosen -> chosen.slats().stream())
            .map(BoardChoice.Slat::width)
            .reduce(Length.ZERO, Length::max);
    return slats(widest, top.slats().size(), top.gap(), top.frontMargin(), top.backMargin());
  }

  private Rack.SlatRow slats(
      Length slatWidth, int count, Length gap, Length frontMargin, Length backMargin) {
    WidthChain across = width.orElseThrow();
    return new Rack.SlatRow(
        across.slatLengths(),
        slat.orElseThrow().first(),
        Sections.thinnestSlat(sheet, slat.orElseThrow()),
        slatWidth,
        count,
        gap,
        sheet
            .file()
            .slats()
            .gapRange()
            .map(given -> new Rack.GapRange(given.value().from(), given.value().to())),
        frontMargin,
        backMargin,
        across.overhang());
  }

  private Rack.DowelJoint joint() {
    DowelPattern dowels = pattern.orElseThrow();
    DowelChain chain = dowel.orElseThrow();
    Length embedment = chain.embedment().length();
    return new Rack.DowelJoint(
        dowels.diameter(), dowels.heights(), embedment, chain.length(), chain.holeDepth());
  }

  private List<Chain> chains(List<ShelfRow> rows) {
    SlatRowChain depth = row.orElseThrow();
    boolean gapGiven = sheet.file().slats().gap().isPresent();
    return Stream.of(
            List.of(
                height.orElseThrow().chain(),
                depth.depthChain(upright.second()),
                width.orElseThrow().chain()),
            new RowChains(depth.rail().length(), gapGiven).of(rows),
            List.of(dowel.orElseThrow().chain()))
        .flatMap(List::stream)
        .toList();
  }
}
