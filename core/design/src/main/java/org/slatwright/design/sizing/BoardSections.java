package org.slatwright.design.sizing;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.slatwright.api.measure.Length;
import org.slatwright.design.rackfile.Given;
import org.slatwright.design.rackfile.RackFile.Board;
import org.slatwright.design.rackfile.Section;

/** Whether every reclaimed board gives slats of the section that is given beside the boards. */
record BoardSections(Worksheet sheet, Section section) {

  /** Warns of the worst board of each kind. */
  void check() {
    check(
        Board::thickness,
        section.first(),
        "thick, less than the %s of timber.slats.section: the strength of all slats is reckoned"
            + " with the thinnest board",
        "thick");
    check(
        Board::width,
        section.second(),
        "wide, less than the %s of timber.slats.section: it gives no slat",
        "wide");
  }

  private void check(Function<Board, Length> size, Length asked, String message, String way) {
    List<Given<Board>> boards = sheet.file().timber().slats().boards();
    boards.stream()
        .filter(board -> size.apply(board.value()).isLessThan(asked))
        .min(Comparator.comparing(board -> size.apply(board.value())))
        .ifPresent(
            board ->
                sheet.warn(
                    board.key(),
                    "this board is %s %s"
                        .formatted(
                            sheet.show(size.apply(board.value())),
                            message.formatted(sheet.show(asked))),
                    "leave out boards less than %s %s, or write a smaller section"
                        .formatted(sheet.show(asked), way)));
  }
}
