package org.slatwright.exporter.figures;

import java.io.IOException;
import java.util.List;
import org.slatwright.api.drawing.Figure;
import org.slatwright.api.drawing.View;
import org.slatwright.api.measure.LengthFormat;
import org.slatwright.api.measure.Unit;
import org.w3c.dom.Element;

/**
 * Spells one drawing as an {@code svg} element: walks its views and figures, and has each spelt.
 * What is put between {@link #addRoot} and {@link #addViews} stands before the drawing.
 */
public final class DrawingWriter {

  private static final LengthFormat MILLIMETRES = new LengthFormat(Unit.MM);

  private final Drawing drawing;
  private final SvgDocument svg;
  private final String width;
  private final String height;
  private final PaperShapes shapes;
  private final TextElements texts;
  private final SheetLettering lettering;

  /** For a document without an outermost element. */
  public DrawingWriter(Drawing drawing, SvgDocument svg, SheetLettering lettering) {
    this.drawing = drawing;
    this.svg = svg;
    this.width = svg.number(drawing.widthMm());
    this.height = svg.number(drawing.heightMm());
    PaperFlip flip = new PaperFlip(drawing.heightMm());
    this.shapes = new PaperShapes(flip);
    this.texts = new TextElements(svg, flip);
    this.lettering = lettering;
  }

  /** Its width on paper, in mm, as SVG and CSS spell it. */
  public String width() {
    return width;
  }

  /** Its height on paper, in mm, as SVG and CSS spell it. */
  public String height() {
    return height;
  }

  /** The outermost element, true to size, with what it is called. */
  public Element addRoot() {
    Element root = svg.root();
    svg.set(root, "width", width + "mm");
    svg.set(root, "height", height + "mm");
    svg.set(root, "viewBox", "0 0 " + width + " " + height);
    svg.set(root, "role", "img");
    String title = svg.setId(svg.addText(root, "title", drawing.title()), "title");
    String description = svg.setId(svg.addText(root, "desc", drawing.description()), "desc");
    svg.set(root, "aria-labelledby", title + " " + description);
    return root;
  }

  /** The paper and all that is drawn on it. */
  public void addViews(Element root) throws IOException {
    addPaper(root);
    for (View view : drawing.views()) {
      addView(root, view);
    }
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
          texts,
          parent,
          new Figure.Text(text.at(), text.height(), legal, text.align(), text.degrees()));
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
