package org.slatwright.design.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.slatwright.api.measure.Length;

/**
 * How good the best choice is, by trying every one: each clear stretch cut in every way, each piece
 * laid in every row whole, or ripped into as many strips as it gives, for any rows. All in whole
 * mm. Written from the promise of {@link BoardChooser} alone, for a few boards and two or three
 * rows.
 */
final class EveryChoice {

  private static final long NM = 1_000_000;

  /**
   * How good a choice is.
   *
   * @param wasteMm2 as the promise defines it
   * @param gapsOff how far what filled rows leave free, shared over their gaps, is from the middle:
   *     the sum of squares, in µm²
   * @param stepsMm how much whole slats of a filled row differ in thickness, summed over rows
   */
  record Merit(
      int filled,
      int fromTheFloorUp,
      int ripped,
      long wasteMm2,
      int boardsCut,
      long gapsOff,
      long stepsMm)
      implements Comparable<Merit> {
    @Override
    public int compareTo(Merit other) {
      return Comparator.comparing(Merit::filled)
          .thenComparing(Merit::fromTheFloorUp)
          .thenComparing(merit -> -merit.ripped)
          .thenComparing(merit -> -merit.wasteMm2)
          .thenComparing(merit -> -merit.boardsCut)
          .thenComparing(merit -> -merit.gapsOff)
          .thenComparing(merit -> -merit.stepsMm)
          .compare(this, other);
    }
  }

  /** A piece and the rows that it serves: one whole, or several with a strip each. */
  private record Use(Board board, List<Integer> rows, boolean ripped) {}

  private final List<Board> boards;
  private final List<RowNeed> needs;
  private final RowRules rules;
  private final long shortest;
  private final List<Use> uses = new ArrayList<>();
  private Merit best = new Merit(0, 0, 0, 0, 0, 0, 0);

  private EveryChoice(List<Board> boards, List<RowNeed> needs, RowRules rules) {
    this.boards = boards;
    this.needs = needs;
    this.rules = rules;
    this.shortest = needs.stream().mapToLong(need -> mm(need.length())).min().orElseThrow();
  }

  static Merit best(List<Board> boards, List<RowNeed> needs, RowRules rules) {
    EveryChoice every = new EveryChoice(boards, needs, rules);
    every.board(0, 0, 0);
    return every.best;
  }

  private void board(int b, long waste, int cut) {
    if (b == boards.size()) {
      judge(waste, cut);
    } else {
      stretch(b, 0, 0, false, waste, cut);
    }
  }

  private void stretch(int b, int s, long good, boolean touched, long waste, int cut) {
    Board board = boards.get(b);
    if (s == board.clear().size()) {
      long lost = touched ? (mm(board.length()) - good) * mm(board.width()) : 0;
      board(b + 1, waste + lost, cut + (touched ? 1 : 0));
      return;
    }
    long length = mm(board.clear().get(s).length());
    piece(b, s, length, 0, good, touched, waste, cut);
  }

  /** Another piece from the stretch, or none. */
  private void piece(
      int b, int s, long left, int from, long good, boolean touched, long waste, int cut) {
    stretch(b, s + 1, good + (left >= shortest ? left : 0), touched, waste, cut);
    Board board = boards.get(b);
    List<Long> lengths = needs.stream().map(need -> mm(need.length())).distinct().sorted().toList();
    for (int i = from; i < lengths.size(); i++) {
      long length = lengths.get(i);
      if (length <= left) {
        for (Use use : usesOf(board, length)) {
          uses.add(use);
          long rest = left - length - mm(rules.kerf());
          piece(b, s, Math.max(0, rest), i, good + length, true, waste, cut);
          uses.remove(uses.size() - 1);
        }
      }
    }
  }

  private List<Use> usesOf(Board board, long length) {
    List<Use> found = new ArrayList<>();
    for (int row = 0; row < needs.size(); row++) {
      if (mm(needs.get(row).length()) == length) {
        found.add(new Use(board, List.of(row), false));
      }
    }
    long strips = (mm(board.width()) + mm(rules.kerf())) / (40 + mm(rules.kerf()));
    strips(board, length, List.of(), strips, found);
    return found;
  }

  private void strips(Board board, long length, List<Integer> rows, long left, List<Use> into) {
    int from = rows.isEmpty() ? 0 : rows.get(rows.size() - 1);
    for (int row = from; row < needs.size() && left > 0; row++) {
      if (mm(needs.get(row).length()) == length) {
        List<Integer> more = new ArrayList<>(rows);
        more.add(row);
        into.add(new Use(board, more, true));
        strips(board, length, more, left - 1, into);
      }
    }
  }

  private void judge(long waste, int cut) {
    long[] strip = new long[needs.size()];
    boolean[] filled = new boolean[needs.size()];
    int ripped = 0;
    long gapsOff = 0;
    long steps = 0;
    for (int row = 0; row < needs.size(); row++) {
      List<Long> thicknesses = new ArrayList<>();
      List<Long> whole = new ArrayList<>();
      long width = 0;
      int strips = 0;
      for (Use use : uses) {
        int times = Collections.frequency(use.rows(), row);
        if (times > 0) {
          thicknesses.add(mm(use.board().thickness()));
          strips += use.ripped() ? times : 0;
          if (!use.ripped()) {
            width += mm(use.board().width());
            whole.add(mm(use.board().thickness()));
          }
        }
      }
      if (!thicknesses.isEmpty()) {
        int slats = strips + whole.size();
        if (!closes(row, slats, strips, width, thicknesses, strip)) {
          return;
        }
        filled[row] = true;
        ripped += strips;
        gapsOff += gapsOff(boards, rules, width, slats, strips);
        steps += step(whole);
      }
    }
    if (uses.stream().filter(Use::ripped).allMatch(use -> fits(use, strip))) {
      Merit merit =
          new Merit(count(filled), fromTheFloorUp(filled), ripped, waste, cut, gapsOff, steps);
      best = merit.compareTo(best) > 0 ? merit : best;
    }
  }

  /** With strips as wide as suits best, from 40 mm to just narrower than the widest board. */
  private static long gapsOff(
      List<Board> boards, RowRules rules, long wholeMm, int slats, int strips) {
    long widest = boards.stream().mapToLong(board -> mm(board.width())).max().orElseThrow();
    long middle = NM * (mm(rules.leastGap()) + mm(rules.mostGap())) / 2;
    long wished = NM * (mm(rules.rail()) - wholeMm) - (slats - 1) * middle;
    long most =
        Math.min(
            strips * (NM * widest - 1),
            NM * (mm(rules.rail()) - wholeMm - (slats - 1) * mm(rules.leastGap())));
    long ripped = strips == 0 ? 0 : Math.max(strips * 40 * NM, Math.min(most, wished));
    long off = Math.abs(wished - ripped) / Math.max(1, slats - 1) / 1000;
    return off * off;
  }

  private static long step(List<Long> thicknesses) {
    return thicknesses.isEmpty() ? 0 : Collections.max(thicknesses) - Collections.min(thicknesses);
  }

  private boolean closes(
      int row, int slats, int strips, long width, List<Long> thicknesses, long[] strip) {
    long narrowest =
        mm(rules.rail()) - (slats - 1) * mm(rules.mostGap()) - 2 * mm(rules.mostMargin());
    long widest = mm(rules.rail()) - (slats - 1) * mm(rules.leastGap());
    long missing = NM * (narrowest - width);
    long each = strips == 0 ? 0 : Math.max(NM * 40, (missing + strips - 1) / strips);
    strip[row] = each;
    return rules.count().map(count -> count == slats).orElse(true)
        && each * strips >= missing
        && each * strips <= NM * (widest - width)
        && Collections.max(thicknesses) - Collections.min(thicknesses) <= mm(rules.thicknessStep());
  }

  private boolean fits(Use use, long[] strip) {
    long taken =
        use.rows().stream().mapToLong(row -> strip[row]).sum()
            + NM * (use.rows().size() - 1) * mm(rules.kerf());
    long width = NM * mm(use.board().width());
    return taken <= width && use.rows().stream().allMatch(row -> strip[row] < width);
  }

  private static int count(boolean[] filled) {
    int count = 0;
    for (boolean each : filled) {
      count += each ? 1 : 0;
    }
    return count;
  }

  private static int fromTheFloorUp(boolean[] filled) {
    int row = 0;
    while (row < filled.length && filled[row]) {
      row++;
    }
    return row;
  }

  /** How good a choice is that was made; what it cuts for rows that are not filled wastes too. */
  static Merit of(BoardChoice choice, List<Board> boards, RowRules rules) {
    boolean[] filled = new boolean[choice.rows().size()];
    int ripped = 0;
    long gapsOff = 0;
    long steps = 0;
    List<BoardChoice.Slat> slats = new ArrayList<>();
    for (int row = 0; row < filled.length; row++) {
      filled[row] = choice.rows().get(row).isFilled();
      for (BoardChoice.Slat slat : choice.rows().get(row).slats()) {
        slat.source().ifPresent(source -> slats.add(slat));
        ripped += isRipped(slat) ? 1 : 0;
      }
      if (filled[row]) {
        List<BoardChoice.Slat> all = choice.rows().get(row).slats();
        List<BoardChoice.Slat> whole = all.stream().filter(slat -> !isRipped(slat)).toList();
        long width = whole.stream().mapToLong(slat -> mm(slat.width())).sum();
        gapsOff += gapsOff(boards, rules, width, all.size(), all.size() - whole.size());
        steps += step(whole.stream().map(slat -> mm(slat.thickness())).toList());
      }
    }
    long shortest =
        choice.rows().stream().mapToLong(row -> mm(row.need().length())).min().orElseThrow();
    long waste = 0;
    int cut = 0;
    for (int b = 0; b < boards.size(); b++) {
      Board board = boards.get(b);
      long good = 0;
      boolean touched = false;
      for (Board.Stretch stretch : board.clear()) {
        long left = mm(stretch.length());
        for (BoardChoice.Slat slat : slatsOn(slats, b, stretch)) {
          touched = true;
          left = Math.max(0, left - mm(slat.length()) - mm(rules.kerf()));
          good += mm(slat.length());
        }
        good += left >= shortest ? left : 0;
      }
      waste += touched ? (mm(board.length()) - good) * mm(board.width()) : 0;
      cut += touched ? 1 : 0;
    }
    return new Merit(count(filled), fromTheFloorUp(filled), ripped, waste, cut, gapsOff, steps);
  }

  private static boolean isRipped(BoardChoice.Slat slat) {
    return slat.source().filter(BoardChoice.Source::ripped).isPresent();
  }

  /** Strips side by side count once. */
  private static List<BoardChoice.Slat> slatsOn(
      List<BoardChoice.Slat> slats, int board, Board.Stretch stretch) {
    List<Length> seen = new ArrayList<>();
    List<BoardChoice.Slat> found = new ArrayList<>();
    for (BoardChoice.Slat slat : slats) {
      BoardChoice.Source source = slat.source().orElseThrow();
      boolean here =
          source.board() == board
              && !source.from().isLessThan(stretch.from())
              && source.from().isLessThan(stretch.to());
      if (here && !seen.contains(source.from())) {
        seen.add(source.from());
        found.add(slat);
      }
    }
    return found;
  }

  static long mm(Length length) {
    return length.wholeTimes(Length.mm(1));
  }

  /** A board with these clear stretches, in mm: from, to, from, to. */
  static Board board(long length, long width, long thickness, long... clear) {
    List<Board.Stretch> stretches = new ArrayList<>();
    List<Board.Stretch> avoid = new ArrayList<>();
    for (int i = 0; i < clear.length; i += 2) {
      stretches.add(new Board.Stretch(Length.mm(clear[i]), Length.mm(clear[i + 1])));
      if (i > 0) {
        avoid.add(new Board.Stretch(Length.mm(clear[i - 1]), Length.mm(clear[i])));
      }
    }
    return new Board(
        "B" + Arrays.hashCode(clear),
        Length.mm(length),
        Length.mm(width),
        Length.mm(thickness),
        stretches,
        avoid);
  }
}
