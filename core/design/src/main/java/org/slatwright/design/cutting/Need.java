package org.slatwright.design.cutting;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Stock;
import org.slatwright.api.plan.CutLine;
import org.slatwright.design.framing.CutList;

/**
 * What is cut from one timber.
 *
 * @param timber in words, as in the cut list
 * @param parts at least one, in the order of the parts list
 */
record Need(Stock stock, String timber, List<Part> parts) {

  Need {
    parts = List.copyOf(parts);
  }

  /** One for each timber that parts are cut from. */
  static List<Need> of(Assembly assembly, LengthFormat lengths) {
    List<CutLine> lines = CutList.of(assembly, lengths);
    return Arrays.stream(Stock.values()).flatMap(stock -> of(stock, lines)).toList();
  }

  private static Stream<Need> of(Stock stock, List<CutLine> lines) {
    List<CutLine> cut =
        lines.stream().filter(line -> line.part().material().stock() == stock).toList();
    if (cut.isEmpty()) {
      return Stream.empty();
    }
    boolean alike = cut.stream().map(CutLine::timber).distinct().count() == 1;
    String timber =
        alike ? cut.get(0).timber() : cut.get(0).part().material().species() + ", reclaimed boards";
    return Stream.of(new Need(stock, timber, cut.stream().map(CutLine::part).toList()));
  }

  Length width() {
    return parts.get(0).shape().width();
  }

  Length thickness() {
    return parts.get(0).shape().thickness();
  }

  Length narrowest() {
    return parts.stream().map(part -> part.shape().width()).reduce(Length::min).orElseThrow();
  }

  Length longest() {
    return parts.stream().map(part -> part.shape().length()).reduce(Length::max).orElseThrow();
  }

  /** All pieces one after the other, a kerf between two. */
  Length running(Length kerf) {
    Length all = Length.ZERO;
    for (Part part : parts) {
      all = all.plus(part.shape().length().plus(kerf).times(part.quantity()));
    }
    return all.minus(kerf);
  }

  /** A part for a person: by its name, and by its mark where others have that name. */
  String name(Part part, long count) {
    boolean alone = parts.stream().filter(other -> other.name().equals(part.name())).count() == 1;
    String name = part.name() + (count == 1 ? "" : "s");
    return count + " " + (alone ? name : name + " " + part.mark());
  }

  /** Such a list, {@code 2 rails, 1 upright}. */
  String names(List<Shortfall> pieces) {
    return pieces.stream()
        .map(piece -> name(piece.part(), piece.count()))
        .collect(Collectors.joining(", "));
  }

  /** So many pieces of a part. */
  record Shortfall(Part part, int count) {}
}
