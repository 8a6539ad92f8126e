package org.slatwright.exporter.dxf;

import java.io.IOException;
import java.util.List;
import org.slatwright.api.model.Outline;
import org.slatwright.api.model.Point2;

/** The entities of an R2000 file, each with a handle of its own and owned by the model space. */
final class R2000Entities {

  private final DxfTagWriter tags;
  private int handle;

  /**
   * Entities to write to {@code tags}.
   *
   * @param firstHandle of the first; the others have the next ones
   */
  R2000Entities(DxfTagWriter tags, int firstHandle) {
    this.tags = tags;
    this.handle = firstHandle;
  }

  /** Writes them all. */
  void write(List<Entity> entities) throws IOException {
    for (Entity entity : entities) {
      write(entity);
    }
  }

  private void write(Entity entity) throws IOException {
    if (entity instanceof Entity.Contour contour) {
      contour(contour);
    } else if (entity instanceof Entity.Stroke stroke) {
      stroke(stroke);
    } else if (entity instanceof Entity.Circle circle) {
      begin("CIRCLE", circle);
      tags.word(100, "AcDbCircle");
      tags.flatPoint(10, circle.outline().centre());
      tags.length(40, circle.outline().diameter().half());
    } else if (entity instanceof Entity.Line line) {
      begin("LINE", line);
      tags.word(100, "AcDbLine");
      tags.flatPoint(10, line.from());
      tags.flatPoint(11, line.to());
    } else {
      lettering((Entity.Lettering) entity);
    }
  }

  private void contour(Entity.Contour contour) throws IOException {
    beginPolyline(contour, contour.outline().edges().size(), 1);
    for (Outline.Edge edge : contour.outline().edges()) {
      tags.point(10, edge.from());
      tags.bulge(Bulge.of(edge));
    }
  }

  private void stroke(Entity.Stroke stroke) throws IOException {
    beginPolyline(stroke, stroke.points().size(), 0);
    for (Point2 point : stroke.points()) {
      tags.point(10, point);
    }
  }

  private void beginPolyline(Entity entity, int points, int closed) throws IOException {
    begin("LWPOLYLINE", entity);
    tags.word(100, "AcDbPolyline");
    // The count comes first, or some readers do not close the line.
    tags.whole(90, points);
    tags.whole(70, closed);
    tags.real(43, 0);
  }

  private void lettering(Entity.Lettering lettering) throws IOException {
    begin("TEXT", lettering);
    tags.word(100, "AcDbText");
    tags.flatPoint(10, lettering.at());
    tags.length(40, lettering.height());
    tags.text(1, lettering.text());
    tags.word(7, "Standard");
    tags.word(100, "AcDbText");
  }

  private void begin(String type, Entity entity) throws IOException {
    tags.word(0, type);
    tags.handle(5, handle++);
    tags.handle(330, Handle.MODEL_SPACE.number());
    tags.word(100, "AcDbEntity");
    tags.word(8, entity.layer().name());
  }
}
