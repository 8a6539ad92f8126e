package org.slatwright.design.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.plan.Chain;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Fit;
import org.slatwright.design.boards.BoardChoice;
import org.slatwright.design.wood.Climate;
import org.slatwright.design.wood.Timber;

/**
 * A rack in which nothing is unknown.
 *
 * @param increment that solved lengths are multiples of
 * @param feetAbove what is longer is told in feet and inches
 * @param species of frame and slats, as the maker calls it
 * @param reclaimed whether slats come from boards that had another use
 * @param timber what uprights and rails are reckoned as
 * @param slatTimber what the slats are reckoned as
 * @param load on each shelf, over all bays
 * @param climate where the rack stands
 * @param anchored whether it is fixed to a wall
 * @param braced whether its maker fixes a diagonal or a panel across its back
 * @param upright section and length of the uprights
 * @param rail section and length of the rails
 * @param interiorWidth between two frames
 * @param foot floor to the underside of the lowest rail
 * @param openings clear height above each shelf but the top one, from the floor up
 * @param topAbove how far the uprights run on above the top slats; zero when flush
 * @param shop what it is made with
 * @param supplies what the parts are cut from
 * @param boardChoice where each slat comes from, where slats are as wide as their reclaimed boards
 * @param chains height, depth, width, slat rows and dowel, each adding up
 * @param fits how much of what it must hold goes on each shelf
 * @param notes what sizing decided that the maker should know
 */
public record Rack(
    String title,
    Unit units,
    Length increment,
    Optional<Length> feetAbove,
    String species,
    boolean reclaimed,
    Timber timber,
    Timber slatTimber,
    Mass load,
    Climate climate,
    boolean anchored,
    boolean braced,
    Upright upright,
    Rail rail,
    int bays,
    Length interiorWidth,
    Length foot,
    List<Length> openings,
    Length topAbove,
    SlatRow slats,
    DowelJoint joint,
    Fixing fixing,
    Shop shop,
    Supplies supplies,
    Optional<BoardChoice> boardChoice,
    List<Chain> chains,
    List<Fit> fits,
    List<Finding> notes) {

  public Rack {
    fits = List.copyOf(fits);
    openings = List.copyOf(openings);
    chains = List.copyOf(chains);
    notes = List.copyOf(notes);
  }

  /**
   * An upright.
   *
   * @param width across the frame's thickness, along the rack's x
   * @param depth along the rack's y
   * @param length full height
   */
  public record Upright(Length width, Length depth, Length length) {}

  /**
   * A rail.
   *
   * @param width across the frame's thickness, centred on the upright
   * @param height along the rack's z
   * @param length between the uprights
   */
  public record Rail(Length width, Length height, Length length) {}

  /**
   * The slats of one shelf: front margin + count × width + (count - 1) × gap + back margin = rail
   * length. Where slats are as wide as their boards, {@link #rows()} has the slats of each shelf;
   * this then has the width of the widest, and the rest of the top shelf.
   *
   * @param lengths of the slats of each bay, from the left; one entry when they run through all
   *     bays
   * @param thickness of the thickest, which is what the heights are reckoned with
   * @param thinnest of the boards they are cut from, which is what their strength is reckoned with
   * @param gap between two slats; zero when there is one
   * @param gapRange that gaps keep within, where the maker says it
   * @param frontMargin between the front uprights and the first slat
   * @param backMargin between the last slat and the rear uprights
   * @param overhang slat ends beyond the outer faces of the frames
   */
  public record SlatRow(
      List<Length> lengths,
      Length thickness,
      Length thinnest,
      Length width,
      int count,
      Length gap,
      Optional<GapRange> gapRange,
      Length frontMargin,
      Length backMargin,
      Length overhang) {
    public SlatRow {
      lengths = List.copyOf(lengths);
    }
  }

  /** From the narrowest gap to the widest. */
  public record GapRange(Length from, Length to) {}

  /**
   * The through-dowel joint at each rail end.
   *
   * @param heights of the dowel centres above the underside of the rail, lowest first
   * @param embedment of a dowel in the rail
   * @param length of a dowel: upright depth + embedment
   * @param holeDepth in the rail: embedment and room for trapped glue
   */
  public record DowelJoint(
      Length diameter, List<Length> heights, Length embedment, Length length, Length holeDepth) {
    public DowelJoint {
      heights = List.copyOf(heights);
    }
  }

  /**
   * What holds a slat down at each bearing.
   *
   * @param perEnd how many at each bearing
   */
  public record Fixing(Fastener.Kind kind, Length length, Length diameter, int perEnd) {}

  /**
   * What the maker works with, apart from the saw.
   *
   * @param bitReach how deep the dowel bit can drill, where the maker says it
   * @param jigSheet what the jig is cut from
   * @param guideBush outside diameter of the bush that guides the bit, where there is one
   * @param cutter what the jig is cut with, where the maker says it
   * @param paper for drawings and templates
   * @param printMargin at every edge of the paper, where nothing is printed
   */
  public record Shop(
      Optional<Length> bitReach,
      JigSheet jigSheet,
      Optional<Length> guideBush,
      Optional<Cutter> cutter,
      Paper paper,
      Length printMargin) {}

  /**
   * Sheet stock.
   *
   * @param thickness as measured
   * @param width of one sheet
   * @param height of one sheet
   */
  public record JigSheet(Length thickness, Length width, Length height) {}

  /** What cuts the plates of the jig. */
  public sealed interface Cutter {

    /**
     * A router.
     *
     * @param tool diameter of its bit
     * @param relieved whether inside corners are cut out so far that a square corner fits in
     */
    record Router(Length tool, boolean relieved) implements Cutter {}

    /** A laser that burns a slit of {@code kerf}. */
    record Laser(Length kerf) implements Cutter {}

    /** By how far its path lies beside the line that it is to leave. */
    default Length offset() {
      return this instanceof Router router ? router.tool().half() : ((Laser) this).kerf().half();
    }
  }

  /** With other brads or screws, which no other size depends on. */
  public Rack withFixing(Fixing other) {
    return new Rack(
        title,
        units,
        increment,
        feetAbove,
        species,
        reclaimed,
        timber,
        slatTimber,
        load,
        climate,
        anchored,
        braced,
        upright,
        rail,
        bays,
        interiorWidth,
        foot,
        openings,
        topAbove,
        slats,
        joint,
        other,
        shop,
        supplies,
        boardChoice,
        chains,
        fits,
        notes);
  }

  /** How its lengths are told to the maker. */
  public LengthFormat lengths() {
    return new LengthFormat(units, feetAbove);
  }

  /** How many frames: one more than bays. */
  public int frames() {
    return bays + 1;
  }

  /** How many shelves: one more than openings. */
  public int shelves() {
    return openings.size() + 1;
  }

  /** Every row of slats as it lies: shelves from the floor up, the runs of each from the left. */
  public List<ShelfRow> rows() {
    return boardChoice
        .map(choice -> choice.rows().stream().map(ShelfRow::chosen).toList())
        .orElseGet(this::evenRows);
  }

  private List<ShelfRow> evenRows() {
    return IntStream.range(0, shelves())
        .boxed()
        .flatMap(
            shelf ->
                IntStream.range(0, slats.lengths().size())
                    .mapToObj(run -> ShelfRow.even(shelf, run, slats)))
        .toList();
  }

  /** Front to back over both uprights. */
  public Length frameDepth() {
    return rail.length().plus(upright.depth().times(2));
  }

  /** The height of the underside of each shelf's rails, from the floor up. */
  public List<Length> railUndersides() {
    Length step = rail.height().plus(slats.thickness());
    List<Length> heights = new ArrayList<>();
    Length at = foot;
    heights.add(at);
    for (Length opening : openings) {
      at = at.plus(step).plus(opening);
      heights.add(at);
    }
    return List.copyOf(heights);
  }
}
