package org.slatwright.design.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.slatwright.api.measure.Length;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.CutBoard;
import org.slatwright.api.plan.CutBoard.Cut;
import org.slatwright.api.plan.CutBoard.Offcut;
import org.slatwright.api.plan.CutBoard.Source;
import org.slatwright.api.plan.MissingPieces;
import org.slatwright.api.plan.SparePiece;
import org.slatwright.api.plan.StopSetting;
import org.slatwright.api.plan.TimberCuts;
import org.slatwright.design.sizing.Supplies.StockLength;
import org.slatwright.design.takeoff.TakeOff;

/** What holds for the cutting of every rack. */
class CuttingPropertyTest {

  @Provide
  static Arbitrary<Sawn> racks() {
    return Arbitraries.oneOf(Sawn.any(), Sawn.any(), Sawn.ragged());
  }

  @Property(tries = 150)
  void everyPieceIsCutOnceOrMissing(@ForAll("racks") Sawn sawn) {
    Map<String, Integer> got = new TreeMap<>();
    for (TimberCuts timber : sawn.plan().timbers()) {
      for (MissingPieces missing : timber.missing()) {
        got.merge(missing.mark(), missing.count(), Integer::sum);
      }
      for (CutBoard board : timber.boards()) {
        for (Cut cut : board.cuts()) {
          got.merge(cut.mark(), board.marks().size(), Integer::sum);
        }
      }
    }
    Map<String, Integer> wanted = new TreeMap<>();
    for (Part part : sawn.assembly().parts()) {
      if (isCut(sawn, part.material().stock())) {
        wanted.put(part.mark(), part.quantity());
      }
    }
    for (SparePiece spare : sawn.plan().spares()) {
      if (spare.fromOffcuts() > 0) {
        wanted.put(spare.mark(), spare.fromOffcuts());
      }
      assertTrue(spare.fromOffcuts() <= spare.wanted(), spare.mark());
    }
    assertEquals(wanted, got);
  }

  @Property(tries = 150)
  void everyPieceHasTheSizeOfItsPart(@ForAll("racks") Sawn sawn) {
    Map<String, Length> lengths = new TreeMap<>();
    sawn.assembly().parts().forEach(part -> lengths.put(part.mark(), part.shape().length()));
    sawn.plan().spares().forEach(spare -> lengths.put(spare.mark(), spare.length()));

    cuts(sawn).forEach(cut -> assertEquals(lengths.get(cut.mark()), cut.length(), cut.mark()));
  }

  @Property(tries = 150)
  void piecesLieInsideTheSquaredEndsClearOfWhatIsAvoided(@ForAll("racks") Sawn sawn) {
    for (TimberCuts timber : sawn.plan().timbers()) {
      for (CutBoard board : timber.boards()) {
        for (Cut cut : board.cuts()) {
          Length end = cut.from().plus(cut.length());
          assertFalse(cut.from().isLessThan(timber.endTrim()), cut.toString());
          assertFalse(end.isMoreThan(board.length().minus(timber.endTrim())), cut.toString());
          assertFalse(cut.across().plus(cut.width()).isMoreThan(board.width()), cut.toString());
          board
              .avoid()
              .forEach(
                  bad ->
                      assertFalse(
                          cut.from().isLessThan(bad.to()) && bad.from().isLessThan(end),
                          cut + " " + bad));
        }
      }
    }
  }

  @Property(tries = 150)
  void aKerfLiesBetweenEveryTwoPieces(@ForAll("racks") Sawn sawn) {
    for (TimberCuts timber : sawn.plan().timbers()) {
      for (CutBoard board : timber.boards()) {
        List<Cut> cuts = board.cuts();
        for (int i = 0; i < cuts.size(); i++) {
          for (int k = i + 1; k < cuts.size(); k++) {
            assertTrue(apart(cuts.get(i), cuts.get(k), timber.kerf()), cuts.toString());
          }
        }
      }
    }
  }

  private static boolean apart(Cut one, Cut other, Length kerf) {
    return clear(one.from(), one.length(), other.from(), other.length(), kerf)
        || clear(one.across(), one.width(), other.across(), other.width(), kerf);
  }

  private static boolean clear(Length a, Length aSize, Length b, Length bSize, Length kerf) {
    return !b.isLessThan(a.plus(aSize).plus(kerf)) || !a.isLessThan(b.plus(bSize).plus(kerf));
  }

  @Property(tries = 150)
  void piecesKerfsTrimsAndOffcutAddUpToTheStockLength(@ForAll("racks") Sawn sawn) {
    for (TimberCuts timber : sawn.plan().timbers()) {
      for (CutBoard board : timber.boards()) {
        if (board.source() != Source.RECLAIMED) {
          assertAddsUp(timber, board);
        }
      }
    }
  }

  /** What is over and no offcut is less than an end to square off. */
  private static void assertAddsUp(TimberCuts timber, CutBoard board) {
    Length at = timber.endTrim();
    for (Cut cut : board.cuts()) {
      assertEquals(at, cut.from(), cut.toString());
      at = at.plus(cut.length()).plus(timber.kerf());
    }
    if (board.offcuts().isEmpty()) {
      Length usable = board.length().minus(timber.endTrim());
      assertFalse(at.isLessThan(usable), board.toString());
      assertFalse(at.isMoreThan(usable.plus(timber.kerf())), board.toString());
    } else {
      Offcut rest = board.offcuts().get(0);
      assertEquals(1, board.offcuts().size());
      assertEquals(at, rest.from());
      assertEquals(board.length(), rest.from().plus(rest.length()));
    }
  }

  @Property(tries = 150)
  void offcutsLieBesideThePiecesAndEachOther(@ForAll("racks") Sawn sawn) {
    for (TimberCuts timber : sawn.plan().timbers()) {
      for (CutBoard board : timber.boards()) {
        List<Cut> all = new ArrayList<>(board.cuts());
        for (Offcut offcut : board.offcuts()) {
          Cut rest =
              new Cut(
                  "rest", true, offcut.from(), offcut.length(), offcut.across(), offcut.width());
          all.forEach(cut -> assertTrue(apart(cut, rest, Length.ZERO), board.toString()));
          all.add(rest);
        }
      }
    }
  }

  @Property(tries = 150)
  void noMoreBoardsAreCutThanThereAre(@ForAll("racks") Sawn sawn) {
    for (TimberCuts timber : sawn.plan().timbers()) {
      listed(sawn, timber.stock()).stream()
          .filter(stock -> stock.onHand().isPresent())
          .map(stock -> stock.length())
          .distinct()
          .filter(length -> limited(sawn, timber.stock(), length))
          .forEach(
              length ->
                  assertTrue(
                      count(timber, length)
                          <= listed(sawn, timber.stock()).stream()
                              .filter(stock -> stock.length().equals(length))
                              .mapToInt(stock -> stock.onHand().orElseThrow())
                              .sum(),
                      timber.toString()));
    }
  }

  private static boolean limited(Sawn sawn, Stock stock, Length length) {
    return listed(sawn, stock).stream()
        .filter(listed -> listed.length().equals(length))
        .allMatch(listed -> listed.onHand().isPresent());
  }

  private static int count(TimberCuts timber, Length length) {
    return timber.boards().stream()
        .filter(board -> board.source() != Source.RECLAIMED && board.length().equals(length))
        .mapToInt(board -> board.marks().size())
        .sum();
  }

  private static List<StockLength> listed(Sawn sawn, Stock stock) {
    return switch (stock) {
      case FRAME -> sawn.rack().supplies().frame();
      case RAIL -> sawn.rack().supplies().rails();
      case SLAT -> sawn.rack().supplies().slats();
      case DOWEL_ROD -> sawn.rack().supplies().rods();
    };
  }

  @Property(tries = 150)
  void nothingIsMissingWhileMoreCanBeBought(@ForAll("racks") Sawn sawn) {
    for (TimberCuts timber : sawn.plan().timbers()) {
      boolean endless =
          listed(sawn, timber.stock()).stream().anyMatch(stock -> stock.onHand().isEmpty());
      assertTrue(!endless || timber.missing().isEmpty(), timber.toString());
    }
  }

  @Property(tries = 150)
  void noTwoMarksAreAlike(@ForAll("racks") Sawn sawn) {
    List<String> marks =
        Stream.of(
                sawn.assembly().parts().stream().map(Part::mark),
                sawn.plan().spares().stream().map(SparePiece::mark),
                sawn.plan().timbers().stream()
                    .flatMap(timber -> timber.boards().stream())
                    .flatMap(board -> board.marks().stream()))
            .flatMap(some -> some)
            .toList();
    assertEquals(marks.size(), new HashSet<>(marks).size(), marks.toString());
  }

  @Property(tries = 150)
  void theStopBlockGivesEveryPiece(@ForAll("racks") Sawn sawn) {
    for (TimberCuts timber : sawn.plan().timbers()) {
      Map<String, Integer> set = new TreeMap<>();
      for (StopSetting setting : timber.settings()) {
        for (StopSetting.Work work : setting.works()) {
          set.merge(work.board() + work.piece() + setting.length(), work.count(), Integer::sum);
        }
      }
      Map<String, Integer> cut = new TreeMap<>();
      for (CutBoard board : timber.boards()) {
        for (String mark : board.marks()) {
          board
              .cuts()
              .forEach(piece -> cut.merge(mark + piece.mark() + piece.length(), 1, Integer::sum));
        }
      }
      assertEquals(cut, set);
    }
  }

  /** No way to cut the boards needs fewer settings than there are lengths. */
  @Property(tries = 150)
  void theStopBlockIsSetOnceForEachLengthThoseOfPartsFirst(@ForAll("racks") Sawn sawn) {
    for (TimberCuts timber : sawn.plan().timbers()) {
      assertEquals(
          Stream.concat(lengths(timber, false), lengths(timber, true)).distinct().toList(),
          timber.settings().stream().map(StopSetting::length).toList());
    }
  }

  /** The longest first. */
  private static Stream<Length> lengths(TimberCuts timber, boolean spare) {
    return timber.boards().stream()
        .flatMap(board -> board.cuts().stream())
        .filter(cut -> cut.spare() == spare)
        .map(Cut::length)
        .sorted(Comparator.reverseOrder());
  }

  /** A rip has a piece beside it. */
  @Property(tries = 150)
  void noBoardIsRippedFurtherThanItIsCut(@ForAll("racks") Sawn sawn) {
    for (TimberCuts timber : sawn.plan().timbers()) {
      for (CutBoard board : timber.boards()) {
        for (Offcut offcut : board.offcuts()) {
          boolean ripped = offcut.across().isPositive();
          Length edge = offcut.across().minus(timber.kerf());
          assertTrue(
              !ripped
                  || board.cuts().stream()
                      .anyMatch(
                          cut ->
                              isInStripOf(cut, offcut)
                                  || cut.across().plus(cut.width()).equals(edge)),
              board.toString());
        }
      }
    }
  }

  private static boolean isInStripOf(Cut cut, Offcut offcut) {
    return cut.across().equals(offcut.across()) && cut.width().equals(offcut.width());
  }

  @Property(tries = 150)
  void whatIsBoughtIsWhatIsCut(@ForAll("racks") Sawn sawn) {
    BigDecimal boards = BigDecimal.ZERO;
    for (TimberCuts timber : sawn.plan().timbers()) {
      int bought = 0;
      for (CutBoard board : timber.boards()) {
        if (board.source() == Source.BOUGHT) {
          bought += board.marks().size();
          BigDecimal each = board.price().orElse(BigDecimal.ZERO);
          boards = boards.add(each.multiply(BigDecimal.valueOf(board.marks().size())));
        }
      }
      int listed =
          sawn.plan().buying().stream()
              .filter(line -> line.what().equals(timber.timber()))
              .flatMap(line -> line.quantity().stream())
              .mapToInt(Integer::intValue)
              .sum();
      assertEquals(listed, bought);
    }
    BigDecimal lines =
        sawn.plan().buying().stream()
            .flatMap(line -> line.cost().stream())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    assertEquals(0, lines.compareTo(sawn.plan().cost().orElse(BigDecimal.ZERO)));
    assertEquals(0, lines.compareTo(boards), lines + " " + boards);
  }

  @Property(tries = 60)
  void theSameRackIsCutTheSame(@ForAll("racks") Sawn sawn) {
    assertEquals(
        sawn.cut(),
        Cutting.plan(sawn.rack(), sawn.assembly(), TakeOff.of(sawn.assembly(), sawn.rack())));
  }

  private static Stream<Cut> cuts(Sawn sawn) {
    return sawn.plan().timbers().stream()
        .flatMap(timber -> timber.boards().stream())
        .flatMap(board -> board.cuts().stream());
  }

  private static boolean isCut(Sawn sawn, Stock stock) {
    return sawn.plan().timbers().stream().anyMatch(timber -> timber.stock() == stock);
  }
}
