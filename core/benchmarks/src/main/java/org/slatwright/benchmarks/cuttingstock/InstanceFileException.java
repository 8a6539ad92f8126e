package org.slatwright.benchmarks.cuttingstock;

/** A file of instances that cannot be used; the message says where and why. */
public final class InstanceFileException extends Exception {

  private static final long serialVersionUID = 1;

  InstanceFileException(String message) {
    super(message);
  }
}
