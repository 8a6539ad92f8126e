package org.slatwright.api.drawing;

import java.util.List;

/**
 * One drawing sheet.
 *
 * @param name its output name: {@code drawings/01-general-arrangement}
 * @param title what it shows
 * @param paper its size
 * @param landscape whether it lies on its long side
 * @param views in drawing order
 */
public record Sheet(String name, String title, Paper paper, boolean landscape, List<View> views) {

  public Sheet {
    views = List.copyOf(views);
  }

  /** In mm. */
  public double widthMm() {
    return (landscape ? paper.longSide() : paper.shortSide()).inMm();
  }

  /** In mm. */
  public double heightMm() {
    return (landscape ? paper.shortSide() : paper.longSide()).inMm();
  }
}
