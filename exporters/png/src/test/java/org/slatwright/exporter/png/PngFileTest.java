package org.slatwright.exporter.png;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.Paper;
import org.slatwright.api.drawing.PaperPoint;
import org.slatwright.testkit.OutsideTool;

/** The file, as two readers outside the project understand it: Python's zlib and the JDK. */
class PngFileTest {

  private static final int DOTS_PER_INCH = 150;

  @TempDir private Path folder;

  /** 150 / 25.4 mm = 5.9055 dots a mm; the number of dots is what that makes of the paper. */
  @ParameterizedTest
  @CsvSource({
    "A4, true, 150, 1754, 1240, 5906",
    "A4, false, 75, 620, 877, 2953",
    "A3, true, 150, 2480, 1754, 5906",
    "LETTER, true, 75, 825, 638, 2953",
    "LETTER, false, 150, 1275, 1650, 5906",
    "TABLOID, true, 150, 2550, 1650, 5906"
  })
  void pythonFindsItWholeAndOfTheSizeOfThePaper(
      Paper paper, boolean landscape, int dotsPerInch, int width, int height, int dotsPerMetre)
      throws Exception {
    byte[] file = Exported.file(Exported.sheet("Frames × 2", paper, landscape, dot()), dotsPerInch);
    assertEquals(
        String.join(
            "\n",
            "IHDR pHYs iTXt IDAT IEND",
            width + " x " + height + ", 4 bits of colour type 0",
            dotsPerMetre + " x " + dotsPerMetre + " a unit of kind 1",
            "Title: Frames × 2",
            Integer.toUnsignedString(check(Greys.read(file)))),
        readByPython(file));
  }

  @Test
  void aTitleOfAnyLettersIsKept() throws Exception {
    String title = "رف الشتلات 🌱 <b>";
    byte[] file = Exported.file(Exported.sheet(title, Paper.A4, true, dot()), DOTS_PER_INCH);
    assertEquals("Title: " + title, readByPython(file).lines().skip(3).findFirst().orElseThrow());
  }

  private String readByPython(byte[] file) throws IOException, InterruptedException {
    Path written = folder.resolve("sheet.png");
    Files.write(written, file);
    return OutsideTool.python("zlib")
        .run("-X", "utf8", OutsideTool.script(PngFileTest.class, "read_png.py"), written.toString())
        .strip();
  }

  /** Of all greys, row by row. */
  private static int check(Greys greys) {
    CRC32 check = new CRC32();
    Arrays.stream(greys.dots()).forEach(check::update);
    return (int) check.getValue();
  }

  private static Figure dot() {
    PaperPoint at = new PaperPoint(100, 100);
    return new Figure.Fill(List.of(at, at.moved(9, 1), at.moved(3, 7)), Figure.Shade.INK);
  }
}
