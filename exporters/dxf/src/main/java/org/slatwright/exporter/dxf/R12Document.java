package org.slatwright.exporter.dxf;

import java.io.IOException;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/**
 * Release 12 (AC1009): no handles, no units, polylines as a run of vertices. Names are upper case
 * and at most 31 characters long.
 */
final class R12Document implements DxfDocument {

  private static final String STYLE = "STANDARD";

  @Override
  public void write(Drawing drawing, DxfTagWriter tags) throws IOException {
    tags.text(999, drawing.title());
    tags.text(999, "unit " + drawing.unit().symbol());
    tags.section("HEADER", () -> header(drawing, tags));
    tags.section("TABLES", () -> tables(drawing, tags));
    tags.section("BLOCKS", () -> {});
    tags.section(
        "ENTITIES",
        () -> {
          for (Entity entity : drawing.entities()) {
            entity(entity, tags);
          }
        });
    tags.word(0, "EOF");
  }

  private static void header(Drawing drawing, DxfTagWriter tags) throws IOException {
    tags.word(9, "$ACADVER");
    tags.word(1, "AC1009");
    tags.word(9, "$EXTMIN");
    tags.flatPoint(10, drawing.extent().low());
    tags.word(9, "$EXTMAX");
    tags.flatPoint(10, drawing.extent().high());
  }

  private static void tables(Drawing drawing, DxfTagWriter tags) throws IOException {
    table(tags, "LTYPE", 1, () -> lineType(tags));
    table(
        tags,
        "LAYER",
        drawing.layers().size(),
        () -> {
          for (Layer layer : drawing.layers()) {
            layer(layer, tags);
          }
        });
    table(tags, "STYLE", 1, () -> style(tags));
  }

  private static void table(DxfTagWriter tags, String name, int count, DxfTagWriter.Body records)
      throws IOException {
    tags.word(0, "TABLE");
    tags.word(2, name);
    tags.whole(70, count);
    records.write();
    tags.word(0, "ENDTAB");
  }

  private static void lineType(DxfTagWriter tags) throws IOException {
    tags.word(0, "LTYPE");
    tags.word(2, "CONTINUOUS");
    tags.whole(70, 0);
    tags.word(3, "Solid line");
    tags.whole(72, 65);
    tags.whole(73, 0);
    tags.real(40, 0);
  }

  private static void layer(Layer layer, DxfTagWriter tags) throws IOException {
    tags.word(0, "LAYER");
    tags.word(2, layer.name());
    tags.whole(70, 0);
    tags.whole(62, layer.colour());
    tags.word(6, "CONTINUOUS");
  }

  private static void style(DxfTagWriter tags) throws IOException {
    tags.word(0, "STYLE");
    tags.word(2, STYLE);
    TextStyle.body(tags);
  }

  private static void entity(Entity entity, DxfTagWriter tags) throws IOException {
    if (entity instanceof Entity.Contour contour) {
      contour(contour, tags);
    } else if (entity instanceof Entity.Stroke stroke) {
      stroke(stroke, tags);
    } else if (entity instanceof Entity.Circle circle) {
      begin("CIRCLE", circle, tags);
      tags.flatPoint(10, circle.outline().centre());
      tags.length(40, circle.outline().diameter().half());
    } else if (entity instanceof Entity.Line line) {
      begin("LINE", line, tags);
      tags.flatPoint(10, line.from());
      tags.flatPoint(11, line.to());
    } else {
      Entity.Lettering lettering = (Entity.Lettering) entity;
      begin("TEXT", lettering, tags);
      tags.flatPoint(10, lettering.at());
      tags.length(40, lettering.height());
      tags.text(1, lettering.text());
      tags.word(7, STYLE);
    }
  }

  private static void contour(Entity.Contour contour, DxfTagWriter tags) throws IOException {
    beginPolyline(contour, 1, tags);
    for (Outline.Edge edge : contour.outline().edges()) {
      begin("VERTEX", contour, tags);
      tags.flatPoint(10, edge.from());
      tags.bulge(Bulge.of(edge));
    }
    begin("SEQEND", contour, tags);
  }

  private static void stroke(Entity.Stroke stroke, DxfTagWriter tags) throws IOException {
    beginPolyline(stroke, 0, tags);
    for (Point2 point : stroke.points()) {
      begin("VERTEX", stroke, tags);
      tags.flatPoint(10, point);
    }
    begin("SEQEND", stroke, tags);
  }

  private static void beginPolyline(Entity entity, int closed, DxfTagWriter tags)
      throws IOException {
    begin("POLYLINE", entity, tags);
    tags.whole(66, 1);
    tags.flatPoint(10, Point2.ORIGIN);
    tags.whole(70, closed);
  }

  private static void begin(String type, Entity entity, DxfTagWriter tags) throws IOException {
    tags.word(0, type);
    tags.word(8, entity.layer().name());
  }
}
