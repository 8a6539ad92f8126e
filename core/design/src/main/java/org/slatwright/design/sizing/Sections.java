package org.slatwright.design.sizing;

import java.util.Collections;
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

  /** Of slat stock, or else the bounds of what reclaimed boards give. */
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

  /** Whether slats are as wide and thick as the reclaimed boards that they come from. */
  static boolean areOfBoards(Worksheet sheet) {
    RackFile.SlatStock stock = sheet.file().timber().slats();
    return stock.section().isEmpty() && !stock.boards().isEmpty();
  }

  /**
   * How wide a slat is taken to be where the rails are as long as their slats make them: of
   * reclaimed boards the middle one, since as many are narrower as wider.
   */
  static Length usualWidth(Worksheet sheet, Section slat) {
    List<Length> widths =
        sheet.file().timber().slats().boards().stream()
            .map(Given::value)
            .flatMap(board -> Collections.nCopies(board.count(), board.width()).stream())
            .sorted()
            .toList();
    return areOfBoards(sheet) ? widths.get(widths.size() / 2) : slat.second();
  }

  /** The thickest, which the heights are reckoned with, and the narrowest. */
  private static Section ofBoards(Worksheet sheet, List<RackFile.Board> boards) {
    Length thickest =
        boards.stream().map(RackFile.Board::thickness).reduce(Length.ZERO, Length::max);
    Length narrowest = boards.stream().map(RackFile.Board::width).reduce(Length::min).orElseThrow();
    if (boards.stream().anyMatch(board -> board.thickness().isLessThan(thickest))) {
      sheet.note(
          "timber.slats.boards",
          "heights are reckoned with slats of %s, the thickest board: thinner ones end lower"
              .formatted(sheet.show(thickest)),
          "");
    }
    return new Section(thickest, narrowest);
  }
}
