package org.slatwright.exporter.dxf;

import java.io.IOException;
import java.util.List;

/** The tables of an R2000 file, complete and in the order that readers ask for. */
final class R2000Tables {

  private final DxfTagWriter tags;
  private final List<Layer> layers;

  R2000Tables(DxfTagWriter tags, List<Layer> layers) {
    this.tags = tags;
    this.layers = layers;
  }

  /** Writes them all. */
  void write() throws IOException {
    table("VPORT", Handle.VPORT_TABLE, 0, () -> {});
    table("LTYPE", Handle.LTYPE_TABLE, 3, this::lineTypes);
    table("LAYER", Handle.LAYER_TABLE, layers.size() + 1, this::layers);
    table("STYLE", Handle.STYLE_TABLE, 1, this::standardStyle);
    table("VIEW", Handle.VIEW_TABLE, 0, () -> {});
    table("UCS", Handle.UCS_TABLE, 0, () -> {});
    table("APPID", Handle.APPID_TABLE, 1, this::application);
    table("DIMSTYLE", Handle.DIMSTYLE_TABLE, 1, this::dimensionStyle);
    table("BLOCK_RECORD", Handle.BLOCK_RECORD_TABLE, 2, this::blockRecords);
  }

  private void table(String name, Handle handle, int records, DxfTagWriter.Body body)
      throws IOException {
    tags.word(0, "TABLE");
    tags.word(2, name);
    tags.handle(5, handle.number());
    tags.handle(330, Handle.NONE.number());
    tags.word(100, "AcDbSymbolTable");
    tags.whole(70, records);
    body.write();
    tags.word(0, "ENDTAB");
  }

  private void lineTypes() throws IOException {
    lineType("ByBlock", Handle.LTYPE_BY_BLOCK, "");
    lineType("ByLayer", Handle.LTYPE_BY_LAYER, "");
    lineType("Continuous", Handle.LTYPE_CONTINUOUS, "Solid line");
  }

  private void lineType(String name, Handle handle, String description) throws IOException {
    record("LTYPE", 5, handle.number(), Handle.LTYPE_TABLE, "AcDbLinetypeTableRecord", name);
    tags.whole(70, 0);
    tags.word(3, description);
    tags.whole(72, 65);
    tags.whole(73, 0);
    tags.real(40, 0);
  }

  private void layers() throws IOException {
    // Nothing is drawn on layer 0, but a file without it is refused.
    layer("0", Handle.LAYER_0.number(), 7);
    for (Layer layer : layers) {
      layer(layer.name(), handle(layer), layer.colour());
    }
  }

  private void layer(String name, int handle, int colour) throws IOException {
    record("LAYER", 5, handle, Handle.LAYER_TABLE, "AcDbLayerTableRecord", name);
    tags.whole(70, 0);
    tags.whole(62, colour);
    tags.word(6, "Continuous");
  }

  private int handle(Layer layer) {
    return Handle.firstFree() + layers.indexOf(layer);
  }

  private void standardStyle() throws IOException {
    record(
        "STYLE",
        5,
        Handle.STYLE_STANDARD.number(),
        Handle.STYLE_TABLE,
        "AcDbTextStyleTableRecord",
        "Standard");
    TextStyle.body(tags);
  }

  private void application() throws IOException {
    record(
        "APPID",
        5,
        Handle.APPID_ACAD.number(),
        Handle.APPID_TABLE,
        "AcDbRegAppTableRecord",
        "ACAD");
    tags.whole(70, 0);
  }

  /** A dimension style has its handle in 105, since 5 once meant something else in it. */
  private void dimensionStyle() throws IOException {
    record(
        "DIMSTYLE",
        105,
        Handle.DIMSTYLE_STANDARD.number(),
        Handle.DIMSTYLE_TABLE,
        "AcDbDimStyleTableRecord",
        "Standard");
    tags.whole(70, 0);
  }

  private void blockRecords() throws IOException {
    blockRecord("*Model_Space", Handle.MODEL_SPACE);
    blockRecord("*Paper_Space", Handle.PAPER_SPACE);
  }

  private void blockRecord(String name, Handle handle) throws IOException {
    record(
        "BLOCK_RECORD",
        5,
        handle.number(),
        Handle.BLOCK_RECORD_TABLE,
        "AcDbBlockTableRecord",
        name);
  }

  private void record(
      String type, int handleCode, int handle, Handle table, String subclass, String name)
      throws IOException {
    tags.word(0, type);
    tags.handle(handleCode, handle);
    tags.handle(330, table.number());
    tags.word(100, "AcDbSymbolTableRecord");
    tags.word(100, subclass);
    tags.word(2, name);
  }
}
