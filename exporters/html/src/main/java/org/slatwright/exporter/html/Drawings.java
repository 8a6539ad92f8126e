package org.slatwright.exporter.html;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.xml.transform.TransformerException;
import org.slatwright.api.drawing.Sheet;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.plan.Plan;
import org.slatwright.exporter.figures.Drawing;
import org.slatwright.exporter.figures.DrawingWriter;
import org.slatwright.exporter.figures.EmbeddedLettering;
import org.slatwright.exporter.figures.SvgDocument;
import org.slatwright.exporter.figures.UniqueIds;

/** The drawing sheets. */
final class Drawings {

  /** Sets the ids of drawings apart from those of the page. */
  private static final String PREFIX = "d-";

  private final EmbeddedLettering lettering;
  private final UniqueIds ids = new UniqueIds(PREFIX);

  private Drawings(EmbeddedLettering lettering) {
    this.lettering = lettering;
  }

  static Section of(Plan plan, EmbeddedLettering lettering) throws IOException, ExportException {
    Drawings drawings = new Drawings(lettering);
    List<Element> figures = new ArrayList<>();
    for (int i = 0; i < plan.sheets().size(); i++) {
      figures.add(drawings.figure(plan.sheets().get(i), title(plan.sheets(), i)));
    }
    return new Section(
        "drawings",
        "Drawings",
        figures.isEmpty()
            ? List.of()
            : List.of(unit(plan), Element.of("div", figures).styled("sheets")));
  }

  /** Sheets of one title are counted. */
  private static String title(List<Sheet> sheets, int index) {
    String title = sheets.get(index).title();
    long alike = count(sheets, title);
    return alike == 1
        ? title
        : title + ", " + count(sheets.subList(0, index + 1), title) + " of " + alike;
  }

  private static long count(List<Sheet> sheets, String title) {
    return sheets.stream().filter(sheet -> sheet.title().equals(title)).count();
  }

  private static Node unit(Plan plan) {
    String unit = plan.lengths().unit().metricOrInch("millimetres", "inches");
    return Element.of("p", "Sizes in the drawings are in " + unit + ", whatever the page shows.")
        .styled("small");
  }

  private Element figure(Sheet sheet, String title) throws IOException, ExportException {
    Element enlarge =
        Element.of("button", "Enlarge")
            .with("type", "button")
            .with("aria-label", "Enlarge " + title)
            .with("data-enlarge")
            .with("hidden");
    return Element.of(
            "figure",
            Element.of("div", svg(sheet)).styled("paper"),
            Element.of("figcaption", Element.of("span", title), enlarge))
        .styled("sheet " + format(sheet))
        .with("data-title", title);
  }

  /** The name of the printed page that it goes on. */
  static String format(Sheet sheet) {
    return sheet.paper().word() + (sheet.landscape() ? "-landscape" : "-portrait");
  }

  private Node svg(Sheet sheet) throws IOException, ExportException {
    SvgDocument svg = new SvgDocument(ids);
    DrawingWriter writer = new DrawingWriter(Drawing.of(sheet), svg, lettering);
    writer.addViews(writer.addRoot());
    try {
      return new Node.Verbatim(svg.fragment());
    } catch (TransformerException e) {
      throw new ExportException(sheet.name() + " cannot be written as SVG", e);
    }
  }
}
