package org.slatwright.exporter.dxf;

/**
 * The handles of what every R2000 file has: each a number of its own, from 1 up. What differs from
 * file to file is numbered from {@link #firstFree} on.
 */
enum Handle {
  /** The owner of what nothing owns. */
  NONE,
  VPORT_TABLE,
  LTYPE_TABLE,
  LTYPE_BY_BLOCK,
  LTYPE_BY_LAYER,
  LTYPE_CONTINUOUS,
  LAYER_TABLE,
  LAYER_0,
  STYLE_TABLE,
  STYLE_STANDARD,
  VIEW_TABLE,
  UCS_TABLE,
  APPID_TABLE,
  APPID_ACAD,
  DIMSTYLE_TABLE,
  DIMSTYLE_STANDARD,
  BLOCK_RECORD_TABLE,
  MODEL_SPACE,
  MODEL_SPACE_BLOCK,
  MODEL_SPACE_END,
  PAPER_SPACE,
  PAPER_SPACE_BLOCK,
  PAPER_SPACE_END,
  ROOT_DICTIONARY,
  GROUP_DICTIONARY;

  /** As written in a tag. */
  int number() {
    return ordinal();
  }

  /** The lowest number that is not taken. */
  static int firstFree() {
    return values().length;
  }
}
