package org.slatwright.api.drawing;

import java.util.Arrays;
import java.util.List;

/**
 * The kinds of line, with the widths and dashes that ISO 128-2:2020 gives for the 0.5/0.25 mm line
 * group (dash 12 d, long dash 24 d, gap 3 d, dot 0.5 d of the line width d).
 */
public enum LineKind {
  /** 01.2 continuous wide: visible edges and outlines. */
  VISIBLE(0.5),
  /** 02.1 dashed narrow: hidden edges. */
  HIDDEN(0.25, 3, 0.75),
  /** 04.1 long-dashed dotted narrow: centre lines and hole axes. */
  CENTRE(0.25, 6, 0.75, 0.125, 0.75),
  /** 01.1 continuous narrow: dimension and extension lines, leaders, table rules. */
  THIN(0.25),
  /** 05.1 long-dashed double-dotted narrow: neighbouring parts. */
  NEIGHBOUR(0.25, 6, 0.75, 0.125, 0.75, 0.125, 0.75),
  /** The frame of the sheet, 0.7 mm (ISO 5457). */
  BORDER(0.7);

  private final double widthMm;
  private final List<Double> dashesMm;

  LineKind(double widthMm, double... dashesMm) {
    this.widthMm = widthMm;
    this.dashesMm = Arrays.stream(dashesMm).boxed().toList();
  }

  /** Line width on paper, in mm. */
  public double widthMm() {
    return widthMm;
  }

  /** Dash, gap, dash, gap … on paper, in mm; empty for a continuous line. */
  public List<Double> dashesMm() {
    return dashesMm;
  }

  /**
   * Whether its ends and corners are round, so that edges drawn one by one meet in a whole corner.
   * Others end where they end.
   */
  public boolean isRound() {
    return this == VISIBLE || this == BORDER;
  }
}
