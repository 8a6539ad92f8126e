package org.slatwright.exporter.json;

import java.io.IOException;
import org.slatwright.api.model.Assembly;
import org.slatwright.api.model.Box;
import org.slatwright.api.model.Fastener;
import org.slatwright.api.model.Group;
import org.slatwright.api.model.Hole;
import org.slatwright.api.model.Joint;
import org.slatwright.api.model.Part;
import org.slatwright.api.model.Piece;
import org.slatwright.api.model.Placement;
import org.slatwright.api.model.Shape;

/** Parts, pieces and what holds them together. Parts go by their mark, pieces by their id. */
final class AssemblyJson {

  private final JsonWriter json;

  AssemblyJson(JsonWriter json) {
    this.json = json;
  }

  /** Writes its lists, each under a key. */
  void write(Assembly assembly) throws IOException {
    json.object("extent", () -> box(assembly.extent()));
    json.objects("parts", assembly.parts(), this::part);
    json.objects("pieces", assembly.pieces(), this::piece);
    json.objects("groups", assembly.groups(), this::group);
    json.objects("joints", assembly.joints(), this::joint);
    json.objects("fasteners", assembly.fasteners(), this::fastener);
  }

  private void part(Part part) throws IOException {
    json.text("mark", part.mark());
    json.text("name", part.name());
    json.name("role", part.role());
    json.whole("quantity", part.quantity());
    json.object("shape", () -> shape(part.shape()));
    json.object(
        "material",
        () -> {
          json.name("stock", part.material().stock());
          json.text("species", part.material().species());
        });
    json.name("grain", part.grain());
    json.objects("holes", part.holes(), this::hole);
  }

  private void shape(Shape shape) throws IOException {
    json.text("kind", shape instanceof Shape.Rod ? "rod" : "bar");
    json.length("length", shape.length());
    json.length("width", shape.width());
    json.length("thickness", shape.thickness());
  }

  private void hole(Hole hole) throws IOException {
    json.text("name", hole.name());
    json.name("face", hole.face());
    json.length("along", hole.along());
    json.length("across", hole.across());
    json.length("diameter", hole.diameter());
    json.length("depth", hole.depth());
    json.flag("through", hole.through());
  }

  private void piece(Piece piece) throws IOException {
    json.text("id", piece.id());
    json.text("part", piece.part().mark());
    json.object("placement", () -> placement(json, piece.placement()));
    json.object("box", () -> box(piece.box()));
  }

  /** Between its braces. */
  static void placement(JsonWriter json, Placement placement) throws IOException {
    json.point("corner", placement.corner());
    json.direction("length", placement.length());
    json.direction("width", placement.width());
    json.direction("thickness", placement.thickness());
  }

  private void box(Box box) throws IOException {
    json.point("low", box.low());
    json.point("high", box.high());
  }

  private void group(Group group) throws IOException {
    json.text("id", group.id());
    json.name("kind", group.kind());
    json.texts("pieces", group.pieces().stream().map(Piece::id).toList());
  }

  private void joint(Joint joint) throws IOException {
    json.text("id", joint.id());
    json.text("upright", joint.upright().id());
    json.text("rail", joint.rail().id());
    json.objects("pins", joint.pins(), this::pin);
  }

  private void pin(Joint.Pin pin) throws IOException {
    json.text("dowel", pin.dowel().id());
    json.text("uprightHole", pin.uprightHole().name());
    json.text("railHole", pin.railHole().name());
  }

  private void fastener(Fastener fastener) throws IOException {
    json.name("kind", fastener.kind());
    json.length("length", fastener.length());
    json.length("diameter", fastener.diameter());
    json.point("head", fastener.head());
    json.direction("inward", fastener.inward());
    json.text("through", fastener.through().id());
    json.text("into", fastener.into().id());
  }
}
