package org.slatwright.design.machining;

import java.util.List;
import org.slatwright.api.measure.Length;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Extent;
import org.slatwright.api.plan.Finding;
import org.slatwright.api.plan.Jig;
import org.slatwright.api.plan.Plate;
import org.slatwright.design.sizing.Spelling;

/** Says which plates are larger than a sheet, by how much, and what sheet takes them all. */
record SheetLimits(Nest nest, Unit units) {

  /** One finding a plate; none when every plate lies on a sheet. */
  List<Finding> on(Jig jig) {
    List<Plate> tooLarge = jig.plates().stream().filter(plate -> !fits(needed(plate))).toList();
    Size enough = tooLarge.stream().map(this::needed).reduce(size(), Size::around);
    return tooLarge.stream().map(plate -> finding(plate, enough)).toList();
  }

  /**
   * A width and a height.
   *
   * @param width the longer of the two where the sheet's width is
   */
  private record Size(Length width, Length height) {

    Size around(Size other) {
      return new Size(Length.max(width, other.width), Length.max(height, other.height));
    }

    Size turned() {
      return new Size(height, width);
    }
  }

  private Size size() {
    return new Size(nest.sheet().width(), nest.sheet().height());
  }

  private boolean fits(Size needed) {
    return size().around(needed).equals(size());
  }

  /** With the spacing all round, and turned the way that suits the sheet. */
  private Size needed(Plate plate) {
    Extent extent = Extent.of(plate.boundary());
    Length both = nest.spacing().times(2);
    Size lying = new Size(extent.width().plus(both), extent.height().plus(both));
    boolean wide = lying.width().compareTo(lying.height()) >= 0;
    boolean sheetWide = size().width().compareTo(size().height()) >= 0;
    return wide == sheetWide ? lying : lying.turned();
  }

  private Finding finding(Plate plate, Size enough) {
    LengthFormat lengths = new LengthFormat(units);
    return new Finding(
        Finding.Severity.WARNING,
        "jig-sheet",
        "plate " + plate.mark() + " " + plate.name(),
        "is larger than the sheet with "
            + lengths.withUnit(nest.spacing())
            + " all round, so that no sheet is laid out",
        words(needed(plate), lengths),
        "at most " + words(size(), lengths),
        "set shop.sheet-size=" + new Spelling(units).pair(enough.width(), "x", enough.height()),
        "common practice, no source");
  }

  private static String words(Size size, LengthFormat lengths) {
    return lengths.withUnit(size.width()) + " x " + lengths.withUnit(size.height());
  }
}
