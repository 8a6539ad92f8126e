package org.slatwright.exporter.svg;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.slatwright.testkit.Ink;
import org.slatwright.testkit.OutsideTool;

/** A program outside the project that draws an SVG file. */
enum Renderer {
  LIBRSVG {
    @Override
    void run(Path svg, Path picture) throws IOException, InterruptedException {
      OutsideTool.thatRuns("rsvg-convert", "--version")
          .run("-d", DOTS, "-p", DOTS, "-o", picture.toString(), svg.toString());
    }
  },

  /** Prints it, as a maker does who opens it in a browser. */
  CHROMIUM {
    @Override
    void run(Path svg, Path picture) throws IOException, InterruptedException {
      OutsideTool chromium = OutsideTool.thatRuns("chromium", "--version");
      OutsideTool mupdf = OutsideTool.thatRuns("mutool", "-v");
      Path pdf = svg.resolveSibling("printed.pdf");
      chromium.run(
          "--headless",
          "--no-sandbox",
          "--disable-gpu",
          "--user-data-dir=" + svg.resolveSibling("profile"),
          "--no-pdf-header-footer",
          "--print-to-pdf=" + pdf,
          svg.toUri().toString());
      mupdf.run(
          "draw",
          "-q",
          "-r",
          DOTS,
          "-c",
          "gray",
          "-F",
          "pgm",
          "-o",
          picture.toString(),
          pdf.toString());
    }
  };

  private static final int DOTS_PER_INCH = 600;
  private static final String DOTS = Integer.toString(DOTS_PER_INCH);

  /** Draws it at 600 dots an inch, or skips the test where the program is missing. */
  Ink draw(byte[] svg, Path folder) throws IOException, InterruptedException {
    Path file = folder.resolve("sheet.svg");
    Path picture = folder.resolve("sheet.png");
    Files.write(file, svg);
    run(file, picture);
    return Ink.read(picture, DOTS_PER_INCH);
  }

  abstract void run(Path svg, Path picture) throws IOException, InterruptedException;
}
