package org.slatwright.api.export;

/** Why a plan could not be written, in words for the maker. */
public class ExportException extends Exception {

  private static final long serialVersionUID = 1L;

  /** With a reason. */
  public ExportException(String message) {
    super(message);
  }

  /** With a reason and what caused it. */
  public ExportException(String message, Throwable cause) {
    super(message, cause);
  }
}
