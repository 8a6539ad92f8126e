package org.slatwright.exporter.dxf;

import java.io.IOException;
import org.slatwright.api.measure.Unit;
import org.slatwright.api.model.Point2;

/** Release 2000 (AC1015): names its unit, and every object has a handle and an owner. */
final class R2000Document implements DxfDocument {

  @Override
  public void write(Drawing drawing, DxfTagWriter tags) throws IOException {
    int firstEntity = Handle.firstFree() + drawing.layers().size();
    int free = firstEntity + drawing.entities().size();
    tags.text(999, drawing.title());
    tags.section("HEADER", () -> header(drawing, free, tags));
    tags.section("CLASSES", () -> {});
    tags.section("TABLES", () -> new R2000Tables(tags, drawing.layers()).write());
    tags.section("BLOCKS", () -> blocks(tags));
    tags.section("ENTITIES", () -> new R2000Entities(tags, firstEntity).write(drawing.entities()));
    tags.section("OBJECTS", () -> objects(tags));
    tags.word(0, "EOF");
  }

  private static void header(Drawing drawing, int free, DxfTagWriter tags) throws IOException {
    boolean metric = drawing.unit() == Unit.MM;
    tags.word(9, "$ACADVER");
    tags.word(1, "AC1015");
    tags.word(9, "$DWGCODEPAGE");
    tags.word(3, "ANSI_1252");
    tags.word(9, "$INSUNITS");
    tags.whole(70, metric ? 4 : 1);
    tags.word(9, "$MEASUREMENT");
    tags.whole(70, metric ? 1 : 0);
    tags.word(9, "$LUNITS");
    tags.whole(70, 2);
    tags.word(9, "$EXTMIN");
    tags.flatPoint(10, drawing.extent().low());
    tags.word(9, "$EXTMAX");
    tags.flatPoint(10, drawing.extent().high());
    tags.word(9, "$HANDSEED");
    tags.handle(5, free);
  }

  private static void blocks(DxfTagWriter tags) throws IOException {
    block(
        "*Model_Space", Handle.MODEL_SPACE, Handle.MODEL_SPACE_BLOCK, Handle.MODEL_SPACE_END, tags);
    block(
        "*Paper_Space", Handle.PAPER_SPACE, Handle.PAPER_SPACE_BLOCK, Handle.PAPER_SPACE_END, tags);
  }

  private static void block(String name, Handle owner, Handle begin, Handle end, DxfTagWriter tags)
      throws IOException {
    blockEntity("BLOCK", begin, owner, tags);
    tags.word(100, "AcDbBlockBegin");
    tags.word(2, name);
    tags.whole(70, 0);
    tags.flatPoint(10, Point2.ORIGIN);
    tags.word(3, name);
    tags.word(1, "");
    blockEntity("ENDBLK", end, owner, tags);
    tags.word(100, "AcDbBlockEnd");
  }

  private static void blockEntity(String type, Handle handle, Handle owner, DxfTagWriter tags)
      throws IOException {
    tags.word(0, type);
    tags.handle(5, handle.number());
    tags.handle(330, owner.number());
    tags.word(100, "AcDbEntity");
    if (owner == Handle.PAPER_SPACE) {
      tags.whole(67, 1);
    }
    tags.word(8, "0");
  }

  private static void objects(DxfTagWriter tags) throws IOException {
    dictionary(Handle.ROOT_DICTIONARY, Handle.NONE, tags);
    tags.word(3, "ACAD_GROUP");
    tags.handle(350, Handle.GROUP_DICTIONARY.number());
    dictionary(Handle.GROUP_DICTIONARY, Handle.ROOT_DICTIONARY, tags);
  }

  private static void dictionary(Handle handle, Handle owner, DxfTagWriter tags)
      throws IOException {
    tags.word(0, "DICTIONARY");
    tags.handle(5, handle.number());
    tags.handle(330, owner.number());
    tags.word(100, "AcDbDictionary");
  }
}
