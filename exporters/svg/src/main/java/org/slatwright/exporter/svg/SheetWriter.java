package org.slatwright.exporter.svg;

import java.io.IOException;
import java.util.List;
import javax.xml.transform.TransformerException;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.View;
import org.slatwright.api.export.ExportException;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.w3c.dom.Element;

/** Writes one drawing: walks its views and figures, and has each spelt. */
final class SheetWriter {

  private static final LengthFormat MILLIMETRES = new LengthFormat(Unit.MM);

  private final Drawing drawing;
  private final SvgDocument svg;
  private final String width;
  private final String height;
  private final PaperShapes shapes;
  private final SheetLettering lettering;

  SheetWriter(Drawing drawing, LetteringFont font, boolean outlines) {
    this.drawing = drawing;
    this.svg = new SvgDocument();
    this.width = svg.number(drawing.widthMm());
    this.height = svg.number(drawing.heightMm());
    PaperFlip flip = new PaperFlip(drawing.heightMm());
    this.shapes = new PaperShapes(flip);
    TextElements texts = new TextElements(svg, flip);
    this.lettering =
        outlines ? new OutlinedLettering(font, texts) : new EmbeddedLettering(font, texts);
  }

  /** The file. */
  byte[] write() throws IOException, ExportException {
    Element root = addRoot();
    addNames(root);
    Element style = svg.add(root, "style");
    addPaper(root);
    for (View view : drawing.views()) {
      addView(root, view);
    }
    style.setTextContent(
        "\n" + SvgStyle.page(width, height) + SvgStyle.figures() + lettering.css());
    try {
      return svg.bytes();
    } catch (TransformerException e) {
      throw new ExportException(drawing.name() + " cannot be written as SVG", e);
    }
  }

  private Element addRoot() {
    Element root = svg.root();
    svg.set(root, "width", width + "mm");
    svg.set(root, "height", height + "mm");
    svg.set(root, "viewBox", "0 0 " + width + " " + height);
    svg.set(root, "role", "img");
    svg.set(root, "aria-labelledby", "title desc");
    return root;
  }

  private void addNames(Element root) {
    svg.setId(svg.addText(root, "title", drawing.title()), "title");
    svg.setId(svg.addText(root, "desc", drawing.description()), "desc");
  }

  private void addPaper(Element root) {
    Element paper = svg.add(root, "rect");
    svg.set(paper, "class", SvgStyle.fillClass(Figure.Shade.PAPER));
    svg.set(paper, "width", width);
    svg.set(paper, "height", height);
  }

  private void addView(Element root, View view) throws IOException {
    Element group = addGroup(root, "view");
    svg.setId(group, view.id());
    view.scale().ifPresent(scale -> svg.set(group, "data-scale", scale.toString()));
    svg.addText(group, "title", view.title());
    addAll(group, view.figures());
  }

  private Element addGroup(Element parent, String styleClass) {
    Element group = svg.add(parent, "g");
    svg.set(group, "class", styleClass);
    return group;
  }

  private void addAll(Element parent, List<Figure> figures) throws IOException {
    for (Figure figure : figures) {
      add(parent, figure);
    }
  }

  private void add(Element parent, Figure figure) throws IOException {
    if (figure instanceof Figure.Polyline polyline) {
      svg.addShape(parent, shapes.of(polyline), SvgStyle.lineClass(polyline.line()));
    } else if (figure instanceof Figure.Circle circle) {
      svg.addShape(parent, shapes.of(circle), SvgStyle.lineClass(circle.line()));
    } else if (figure instanceof Figure.Arc arc) {
      svg.addShape(parent, shapes.of(arc), SvgStyle.lineClass(arc.line()));
    } else if (figure instanceof Figure.Fill fill) {
      svg.addShape(parent, shapes.of(fill), SvgStyle.fillClass(fill.shade()));
    } else if (figure instanceof Figure.Text text) {
      addLettering(parent, text);
    } else if (figure instanceof Figure.Dimension dimension) {
      addDimension(parent, dimension);
    } else if (figure instanceof Figure.Cluster cluster) {
      addCluster(parent, cluster);
    } else {
      throw new IllegalArgumentException("no way to write a " + figure.getClass());
    }
  }

  private void addLettering(Element parent, Figure.Text text) throws IOException {
    if (!text.text().isBlank()) {
      String legal = XmlText.legal(text.text());
      lettering.add(
          parent, new Figure.Text(text.at(), text.height(), legal, text.align(), text.degrees()));
    }
  }

  private void addDimension(Element parent, Figure.Dimension dimension) throws IOException {
    Element group = addGroup(parent, "dimension");
    svg.set(group, "data-mm", MILLIMETRES.number(dimension.value()));
    addAll(group, dimension.drawn());
  }

  private void addCluster(Element parent, Figure.Cluster cluster) throws IOException {
    Element group = addGroup(parent, "cluster");
    svg.setId(group, cluster.id());
    svg.addText(group, "title", cluster.title());
    addAll(group, cluster.figures());
  }
}
