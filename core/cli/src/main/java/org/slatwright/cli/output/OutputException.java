package org.slatwright.cli.output;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** A file that could not be written, in one line for the maker. */
public final class OutputException extends IOException {

  private static final long serialVersionUID = 1L;

  /** A complaint that is complete. */
  public OutputException(String message) {
    super(message);
  }

  OutputException(String message, IOException cause) {
    super(message, cause);
  }

  /** That {@code file} could not be written and why; a cause that says so already is enough. */
  public static OutputException cannotWrite(Path file, IOException cause) {
    if (cause instanceof OutputException told) {
      return told;
    }
    String reason =
        cause instanceof NoSuchFileException ? "its folder does not exist" : reason(cause);
    return new OutputException("cannot write " + file + ": " + reason, cause);
  }

  /** What the system says, in words. */
  public static String reason(IOException failure) {
    if (failure instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (failure instanceof NoSuchFileException) {
      return "there is no such file";
    }
    if (failure instanceof NotDirectoryException) {
      return "it is not a folder";
    }
    if (failure instanceof FileSystemException told && told.getReason() != null) {
      return told.getReason();
    }
    return failure.getMessage() == null ? failure.getClass().getSimpleName() : failure.getMessage();
  }
}
