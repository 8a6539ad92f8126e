package org.slatwright.exporter.png;

import java.awt.BasicStroke;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.slatwright.api.drawing.LineKind;

/** What lines are drawn with, in mm. */
final class Pens {

  /** A corner sharper than 29° is cut off, lest its point run far beyond it. */
  private static final float MITRE_LIMIT = 4;

  private final Map<LineKind, BasicStroke> strokes = new EnumMap<>(LineKind.class);

  /** Nothing that they draw is smaller than a dot of {@code dotMm}: it would be lost. */
  Pens(double dotMm) {
    for (LineKind line : LineKind.values()) {
      strokes.put(line, stroke(line, dotMm));
    }
  }

  BasicStroke of(LineKind line) {
    return strokes.get(line);
  }

  private static BasicStroke stroke(LineKind line, double dotMm) {
    int cap = line.isRound() ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT;
    int join = line.isRound() ? BasicStroke.JOIN_ROUND : BasicStroke.JOIN_MITER;
    float width = (float) Math.max(line.widthMm(), dotMm);
    return line.dashesMm().isEmpty()
        ? new BasicStroke(width, cap, join, MITRE_LIMIT)
        : new BasicStroke(width, cap, join, MITRE_LIMIT, dashes(line.dashesMm(), dotMm), 0);
  }

  /** What a dash gains the gap after it loses. */
  private static float[] dashes(List<Double> mm, double dotMm) {
    float[] dashes = new float[mm.size()];
    for (int i = 0; i < dashes.length; i += 2) {
      double dash = Math.max(mm.get(i), dotMm);
      dashes[i] = (float) dash;
      dashes[i + 1] = (float) (mm.get(i + 1) - (dash - mm.get(i)));
    }
    return dashes;
  }
}
