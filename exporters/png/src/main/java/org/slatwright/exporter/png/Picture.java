package org.slatwright.exporter.png;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.io.IOException;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.drawing.View;

/**
 * A picture in greys.
 *
 * @param width in dots
 * @param height in dots
 * @param dotsPerMm how large it is meant to be
 * @param greys row by row from the top, from the left, 0 for black to 255 for white; not to be
 *     changed
 */
record Picture(int width, int height, double dotsPerMm, byte[] greys) {

  private static final double MM_PER_INCH = 25.4;

  /** Of a sheet. */
  static Picture of(Sheet sheet, GlyphOutlines glyphs, int dotsPerInch) throws IOException {
    double dotsPerMm = dotsPerInch / MM_PER_INCH;
    int width = (int) Math.round(sheet.widthMm() * dotsPerMm);
    int height = (int) Math.round(sheet.heightMm() * dotsPerMm);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D graphics = image.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, height);
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    // From here on in mm from the lower left corner of the paper, y up.
    graphics.translate(0, height);
    graphics.scale(dotsPerMm, -dotsPerMm);
    FigurePainter painter = new FigurePainter(graphics, glyphs, 1 / dotsPerMm);
    for (View view : sheet.views()) {
      painter.paint(view.figures());
    }
    graphics.dispose();
    byte[] greys = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    return new Picture(width, height, dotsPerMm, greys);
  }
}
