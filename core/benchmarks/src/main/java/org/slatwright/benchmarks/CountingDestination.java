package org.slatwright.benchmarks;

import java.io.IOException;
import java.io.OutputStream;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.OutputNames;

/** Counts the bytes and keeps none, so that no disk is measured. */
final class CountingDestination implements Destination {

  private final OutputNames names = new OutputNames();
  private final Counter counter = new Counter();

  @Override
  public void file(String name, Content content) throws IOException {
    names.claim(name);
    content.writeTo(counter);
  }

  /** How many bytes all files have. */
  long bytes() {
    return counter.bytes;
  }

  private static final class Counter extends OutputStream {

    private long bytes;

    @Override
    public void write(int value) {
      bytes++;
    }

    @Override
    public void write(byte[] all, int from, int length) {
      bytes += length;
    }
  }
}
