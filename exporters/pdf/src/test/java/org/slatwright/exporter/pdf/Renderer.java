package org.slatwright.exporter.pdf;

import java.io.IOException;
import java.nio.file.Path;
import org.slatwright.testkit.Ink;
import org.slatwright.testkit.OutsideTool;

/** A program outside the project that draws a page of a PDF file. */
enum Renderer {
  POPPLER {
    @Override
    void run(Path pdf, String page, Path picture) throws IOException, InterruptedException {
      String stem = picture.toString().replaceAll("\\.pgm$", "");
      OutsideTool.thatRuns("pdftoppm", "-v")
          .run("-r", DOTS, "-gray", "-singlefile", "-f", page, "-l", page, pdf.toString(), stem);
    }
  },
  MUPDF {
    @Override
    void run(Path pdf, String page, Path picture) throws IOException, InterruptedException {
      OutsideTool.thatRuns("mutool", "-v")
          .run(
              "draw",
              "-q",
              "-r",
              DOTS,
              "-c",
              "gray",
              "-o",
              picture.toString(),
              pdf.toString(),
              page);
    }
  };

  private static final int DOTS_PER_INCH = 600;
  private static final String DOTS = Integer.toString(DOTS_PER_INCH);

  /**
   * Draws a page, or skips the test where the program is missing.
   *
   * @param page from 1
   */
  Ink draw(Path pdf, int page) throws IOException, InterruptedException {
    Path picture = pdf.resolveSibling(name() + page + ".pgm");
    run(pdf, Integer.toString(page), picture);
    return Ink.read(picture, DOTS_PER_INCH);
  }

  abstract void run(Path pdf, String page, Path picture) throws IOException, InterruptedException;
}
