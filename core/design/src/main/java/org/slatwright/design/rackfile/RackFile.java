package org.slatwright.design.rackfile;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.Mass;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Fastener;
import org.slatwright.design.wood.Climate;

/**
 * A rack file as it was read: valid key by key, not yet solved.
 *
 * @param increment that solved lengths snap to; 1 mm or 1/16 in unless given
 * @param feetAbove what is longer is told in feet and inches; only where units are inches
 * @param keys every key that the file or a {@code --set} gives, with its place, in file order;
 *     lists as {@code rack.openings}, not by entry
 * @param written what it was read from
 */
public record RackFile(
    Given<String> title,
    Unit units,
    Length increment,
    Optional<Length> feetAbove,
    List<Held> holds,
    Timber timber,
    Rack rack,
    Slats slats,
    Joint joint,
    Shop shop,
    Load load,
    Map<String, Place> keys,
    Written written) {

  /**
   * The file as it would read with one more {@code --set}.
   *
   * @throws RackFileException when it could not be read with that
   */
  public RackFile with(String setting) throws RackFileException {
    return written.with(setting);
  }

  /**
   * What the checks reckon with.
   *
   * @param perShelf on each shelf, over all bays
   * @param climate where the rack stands; indoors unless given
   */
  public record Load(Optional<Given<Mass>> perShelf, Given<Climate> climate) {}

  /**
   * A thing that the rack must take.
   *
   * @param name no two have the same
   * @param width along the shelf
   * @param depth front to back
   * @param across how many side by side in a bay; 1 unless given
   * @param deep how many front to back; 1 unless given
   * @param high how many on top of one another; 1 unless given
   * @param lie as given, unless said otherwise
   * @param clearance kept free around each, and above the topmost; zero unless given
   */
  public record Held(
      String name,
      Length width,
      Length depth,
      Length height,
      int across,
      int deep,
      int high,
      Lie lie,
      Length clearance) {}

  /** Which way round a thing may lie. */
  public enum Lie {
    /** With its width along the shelf. */
    AS_GIVEN("as-given"),
    /** With its width or its depth along the shelf. */
    EITHER_WAY("either-way");

    private final String word;

    Lie(String word) {
      this.word = word;
    }

    /** As written in a rack file. */
    public String word() {
      return word;
    }
  }

  /** What is cut up. */
  public record Timber(FrameStock frame, Optional<RailStock> rails, SlatStock slats, Dowel dowel) {

    /** Of rails that have stock of their own. */
    public Optional<Given<Section>> railSection() {
      return rails.map(RailStock::section);
    }
  }

  /**
   * Stock of the uprights, and of the rails unless they have their own.
   *
   * @param section as measured: width across the frame's thickness, then depth
   */
  public record FrameStock(
      Given<Section> section, Optional<Given<String>> species, List<StockLength> lengths) {}

  /**
   * Stock of the rails, where they have their own.
   *
   * @param section as measured: width across the frame, then height
   */
  public record RailStock(Given<Section> section, List<StockLength> lengths) {}

  /**
   * A length that can be bought, or lies in the shop.
   *
   * @param price empty when already owned
   * @param onHand how many there are, or empty for as many as are wanted
   */
  public record StockLength(
      Given<Length> length, Optional<BigDecimal> price, Optional<Integer> onHand) {}

  /**
   * Stock of the slats: one size, or reclaimed boards measured one by one, or both.
   *
   * @param section thickness, then width
   */
  public record SlatStock(
      Optional<Given<Section>> section, List<StockLength> lengths, List<Given<Board>> boards) {}

  /**
   * A reclaimed board.
   *
   * @param count how many like it; 1 unless given
   * @param avoid stretches along its length that no slat may hold, in order
   */
  public record Board(
      Length length, Length width, Length thickness, int count, List<Range> avoid) {}

  /** From one length to another, {@code 3..20}; never the wrong way round. */
  public record Range(Length from, Length to) {}

  /**
   * Dowels.
   *
   * @param rodLength when cut from rod
   * @param length when bought cut
   * @param price of a rod, or of one bought cut
   */
  public record Dowel(
      Optional<Given<Length>> diameter,
      Optional<Given<Length>> rodLength,
      Optional<Given<Length>> length,
      Optional<BigDecimal> price) {}

  /**
   * Sizes of the rack.
   *
   * @param bays 1 unless given
   * @param openings from the floor up; empty when left out
   * @param stands free unless given
   * @param brace none unless given
   */
  public record Rack(
      int bays,
      Optional<Given<Length>> interiorWidth,
      Optional<Given<Length>> railLength,
      Optional<Given<Length>> upright,
      Optional<Given<Length>> foot,
      Optional<Given<List<Opening>>> openings,
      Optional<Given<Top>> top,
      Stands stands,
      Brace brace) {}

  /** What keeps the rack upright. */
  public enum Stands {
    FREE("free"),
    ANCHORED("anchored");

    private final String word;

    Stands(String word) {
      this.word = word;
    }

    /** As written in a rack file. */
    public String word() {
      return word;
    }
  }

  /** What keeps the rack from leaning sideways, beside the fixing of its slats. */
  public enum Brace {
    NONE("none"),

    /** A diagonal or a panel across two frames, which the maker adds. */
    BACK("back");

    private final String word;

    Brace(String word) {
      this.word = word;
    }

    /** As written in a rack file. */
    public String word() {
      return word;
    }
  }

  /**
   * One entry of the openings.
   *
   * @param clear its clear height, {@code even}, or what it is for
   * @param count how many alike, at least 1
   */
  public record Opening(Given<Clear> clear, int count) {}

  /** A clear height. */
  public sealed interface Clear {
    /** As given. */
    record Fixed(Length height) implements Clear {}

    /** An equal share of what is left. */
    record Even() implements Clear {}

    /** As high as that thing needs. */
    record For(Held thing) implements Clear {}
  }

  /** How the rack ends at the top. */
  public sealed interface Top {
    /** The top slats end level with the uprights. */
    record Flush() implements Top {}

    /** The uprights run on above the top slats. */
    record Above(Length height) implements Top {}
  }

  /**
   * How slats are laid.
   *
   * @param thicknessStep the most that two slats of one shelf may differ in thickness; 2 mm (1/16
   *     in) unless given
   * @param run through unless given
   * @param overhang zero unless given
   */
  public record Slats(
      Optional<Given<Integer>> perShelf,
      Optional<Given<Length>> gap,
      Optional<Given<Range>> gapRange,
      Length thicknessStep,
      Given<Run> run,
      Length overhang) {}

  /** Whether slats cross all bays or one. */
  public enum Run {
    THROUGH("through"),
    PER_BAY("per-bay");

    private final String word;

    Run(String word) {
      this.word = word;
    }

    /** As written in a rack file. */
    public String word() {
      return word;
    }
  }

  /**
   * Joints and nailing.
   *
   * @param dowels per rail end, 1 or 2; 1 unless given
   * @param embedment depth in the rail
   */
  public record Joint(Given<Integer> dowels, Optional<Given<Length>> embedment, Fixing fixing) {}

  /**
   * What holds the slats down.
   *
   * @param kind brad unless given
   * @param perEnd how many at each bearing; 2 unless given
   */
  public record Fixing(
      Fastener.Kind kind,
      Optional<Given<Length>> length,
      Optional<Given<Length>> diameter,
      int perEnd) {}

  /**
   * The shop.
   *
   * @param kerf of the saw; 3.2 mm (1/8 in) unless given
   * @param endTrim squared off each end of a stock length; 10 mm (3/8 in) unless given
   * @param jigSheet thickness of the sheet the jig is cut from; 6 mm (1/4 in) unless given
   * @param sheetSize of that sheet; 600 x 400 mm (24 x 16 in) unless given
   * @param guideBush outside diameter of the bush that guides the bit
   * @param paper A4 in millimetres, letter in inches, unless given
   * @param printMargin at each edge of the paper, where the printer cannot reach; 1/4 in unless
   *     given
   */
  public record Shop(
      Length kerf,
      Length endTrim,
      Optional<Given<Length>> bitReach,
      Given<Length> jigSheet,
      Given<Section> sheetSize,
      Optional<Given<Length>> guideBush,
      Optional<Cutter> cutter,
      Paper paper,
      Length printMargin) {}

  /** The machine that cuts the jig. */
  public sealed interface Cutter {
    /**
     * A router.
     *
     * @param tool diameter of its bit
     * @param relieved whether inside corners are cut out so far that a square corner fits in
     */
    record Router(Length tool, boolean relieved) implements Cutter {}

    /** A laser that burns a slit of that width. */
    record Laser(Length kerf) implements Cutter {}
  }
}
