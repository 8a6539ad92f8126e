package org.slatwright.testkit;

import java.io.IOException;
import java.io.OutputStream;
import org.slatwright.api.export.Destination;

/** A disk that is full at once: every file fails, before or while its content is written. */
final class FailingDestination implements Destination {

  private final boolean whileWriting;

  FailingDestination(boolean whileWriting) {
    this.whileWriting = whileWriting;
  }

  @Override
  public void file(String name, Content content) throws IOException {
    if (whileWriting) {
      content.writeTo(new FullDisk());
    }
    throw new DiskFull();
  }

  /** The failure, recognisable among others. */
  static final class DiskFull extends IOException {

    private static final long serialVersionUID = 1L;

    DiskFull() {
      super("no space left");
    }
  }

  private static final class FullDisk extends OutputStream {

    @Override
    public void write(int value) throws IOException {
      throw new DiskFull();
    }
  }
}
