package org.slatwright.exporter.figures;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.w3c.dom.Document;

/**
 * Spells numbers to a thousandth of a millimetre, without a locale. Batik's own number formats are
 * shared by all of its contexts and not made for several threads, so that this has one of its own.
 */
final class SvgNumbers extends SVGGeneratorContext {

  private static final int DECIMALS = 3;

  SvgNumbers(Document document) {
    super(document);
    setPrecision(DECIMALS);
    decimalFormat = new DecimalFormat("0.###", DecimalFormatSymbols.getInstance(Locale.ROOT));
  }
}
