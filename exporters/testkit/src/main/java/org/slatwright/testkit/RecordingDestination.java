package org.slatwright.testkit;

import java.io.ByteArrayOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.slatwright.api.export.Destination;
import org.slatwright.api.export.OutputNames;

/**
 * Keeps what an exporter writes in memory, and remembers what it did wrong even when the exporter
 * hides the exception. For one thread.
 */
public final class RecordingDestination implements Destination {

  private final OutputNames names = new OutputNames();
  private final SortedMap<String, byte[]> files = new TreeMap<>();
  private final List<String> faults = new ArrayList<>();

  @Override
  public void file(String name, Content content) throws IOException {
    try {
      names.claim(name);
    } catch (IllegalArgumentException e) {
      faults.add(e.getMessage());
      throw e;
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    UntilReturned out = new UntilReturned(name, bytes);
    try {
      content.writeTo(out);
    } finally {
      out.returned = true;
    }
    files.put(name, bytes.toByteArray());
  }

  /** The names written, in alphabetical order. */
  public Set<String> names() {
    return files.keySet();
  }

  /**
   * The bytes of one file.
   *
   * @throws IllegalArgumentException when it was not written
   */
  public byte[] bytes(String name) {
    byte[] bytes = files.get(name);
    if (bytes == null) {
      throw new IllegalArgumentException(name + " was not written, only " + names());
    }
    return bytes.clone();
  }

  /** One file as UTF-8 text. */
  public String text(String name) {
    return new String(bytes(name), StandardCharsets.UTF_8);
  }

  /** One file with a character for each byte, so that unequal bytes are unequal text. */
  String latin1(String name) {
    return new String(bytes(name), StandardCharsets.ISO_8859_1);
  }

  /**
   * What the exporter did wrong: unsafe or repeated names, writing too late; empty when nothing.
   */
  public List<String> faults() {
    return List.copyOf(faults);
  }

  /** Refuses what comes after the content has returned. */
  private final class UntilReturned extends FilterOutputStream {

    private final String name;
    private boolean returned;

    UntilReturned(String name, OutputStream out) {
      super(out);
      this.name = name;
    }

    @Override
    public void write(int value) throws IOException {
      requireOpen();
      out.write(value);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      requireOpen();
      out.write(bytes, from, length);
    }

    /** An exporter's writer may close it early; it stays open until the content returns. */
    @Override
    public void close() throws IOException {
      flush();
    }

    private void requireOpen() throws IOException {
      if (returned) {
        faults.add("wrote to " + name + " after its content had returned");
        throw new IOException(name + " is closed");
      }
    }
  }
}
