package org.slatwright.exporter.html;

import java.io.IOException;
import java.util.stream.Collectors;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.plan.Plan;
import org.slatwright.exporter.figures.EmbeddedLettering;
import org.slatwright.exporter.figures.SvgStyle;

/** The style sheet of one page. */
final class PageStyle {

  /** The colours of drawings, which the page's own style sheets set. */
  private static final SvgStyle COLOURS =
      new SvgStyle("var(--line)", "var(--shade)", "var(--sheet)");

  private PageStyle() {}

  /** Once everything that is lettered was told to {@code lettering}. */
  static String of(Plan plan, EmbeddedLettering lettering) throws IOException, ExportException {
    return PageAssets.styles() + COLOURS.figures() + lettering.css(COLOURS) + pages(plan);
  }

  /** Each size of sheet is printed on a page of its own size, so that its scale holds. */
  private static String pages(Plan plan) {
    return plan.sheets().stream().map(PageStyle::page).distinct().collect(Collectors.joining());
  }

  private static String page(Sheet sheet) {
    String format = Drawings.format(sheet);
    String size = sheet.widthMm() + "mm " + sheet.heightMm() + "mm";
    return "@page %1$s{size:%2$s;margin:0}\n.%1$s{page:%1$s}\n".formatted(format, size);
  }
}
