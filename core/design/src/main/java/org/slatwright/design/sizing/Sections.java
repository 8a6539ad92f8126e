package org.slatwright.design.sizing;

import java.util.List;
import java.util.Optional;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.Problem;
import org.slatwright.design.rackfile.RackFile;
import org.slatwright.design.rackfile.Section;

/** The sections of upright, rail and slat. */
final class Sections {

  private Sections() {}

  static Section upright(Worksheet sheet) {
    return sheet.file().timber().frame().section().value();
  }

  /** Of frame stock, as wide as the upright and as high as it is deep, unless it has its own. */
  static Section rail(Worksheet sheet) {
    Section upright = upright(sheet);
    Optional<Given<Section>> own = sheet.file().timber().railSection();
    if (own.isEmpty()) {
      return upright;
    }
    Section rail = own.get().value();
    if (rail.first().isMoreThan(upright.first())) {
      sheet.complain(
          own.get().place(),
          "rails %s wide stand out beyond uprights %s wide"
              .formatted(sheet.show(rail.first()), sheet.show(upright.first())),
          narrowed(sheet, upright.first(), rail.second()));
    }
    return rail;
  }

  private static Problem.Change narrowed(Worksheet sheet, Length width, Length height) {
    return new Problem.Change(
        "timber.rails.section=" + sheet.spell(width, "x", height),
        "rails ripped to " + sheet.show(width));
  }

  /** Of slat stock, or else what every reclaimed board can be brought to. */
  static Optional<Section> slat(Worksheet sheet) {
    RackFile.SlatStock stock = sheet.file().timber().slats();
    if (stock.section().isPresent()) {
      new BoardSections(sheet, stock.section().get().value()).check();
      return stock.section().map(Given::value);
    }
    List<RackFile.Board> boards = stock.boards().stream().map(Given::value).toList();
    if (boards.isEmpty()) {
      return sheet.complain(
          sheet.place("timber.slats"),
          "nothing says what the slats are cut from: give timber.slats.section (thickness x width),"
              + " or timber.slats.boards, measured one by one");
    }
    return Optional.of(ofBoards(sheet, boards));
  }

  /** Of slats of that section: a reclaimed board may be planed thinner, but never be thicker. */
  static Length thinnestSlat(Worksheet sheet, Section slat) {
    return sheet.file().timber().slats().boards().stream()
        .map(board -> board.value().thickness())
        .reduce(slat.first(), Length::min);
  }

  private static Section ofBoards(Worksheet sheet, List<RackFile.Board> boards) {
    Length thickest =
        boards.stream().map(RackFile.Board::thickness).reduce(Length.ZERO, Length::max);
    Length narrowest = boards.stream().map(RackFile.Board::width).reduce(Length::min).orElseThrow();
    sheet.note(
        "timber.slats.boards",
        "all slats are ripped to %s, the narrowest board, and reckoned %s thick, the thickest"
            .formatted(sheet.show(narrowest), sheet.show(thickest)),
        "boards are not chosen shelf by shelf yet; leave out a narrow board to have wider slats");
    return new Section(thickest, narrowest);
  }
}
