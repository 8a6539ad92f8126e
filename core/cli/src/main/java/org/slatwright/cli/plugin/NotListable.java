package org.slatwright.cli.plugin;

/** Why an exporter that was constructed cannot be listed, in words for the maker. */
final class NotListable extends Exception {

  private static final long serialVersionUID = 1L;

  NotListable(String message) {
    super(message);
  }
}
