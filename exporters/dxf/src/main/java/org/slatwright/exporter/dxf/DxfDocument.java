package org.slatwright.exporter.dxf;

import java.io.IOException;

/** One version of the format: what a file of it consists of, and in which order. */
sealed interface DxfDocument permits R12Document, R2000Document {

  /** Writes {@code drawing} as a whole file. */
  void write(Drawing drawing, DxfTagWriter tags) throws IOException;
}
