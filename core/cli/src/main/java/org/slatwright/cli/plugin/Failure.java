package org.slatwright.cli.plugin;

import java.lang.reflect.InvocationTargetException;
import java.util.ServiceConfigurationError;
import org.slatwright.api.export.ExportException;

/** Says in one line what foreign code threw. */
public final class Failure {

  private Failure() {}

  /** What went wrong, without a stack trace; a message meant for the maker is taken as it is. */
  public static String reason(Throwable thrown) {
    Throwable cause = innermost(thrown);
    String message = cause.getMessage() == null ? "" : cause.getMessage().strip();
    String words = message.replaceAll("\\s+", " ");
    boolean meantForTheMaker =
        cause instanceof ExportException
            || cause instanceof NotListable
            || cause instanceof ServiceConfigurationError;
    if (meantForTheMaker && !words.isEmpty()) {
      return words;
    }
    String kind = cause.getClass().getSimpleName();
    return words.isEmpty() ? kind : kind + ": " + words;
  }

  /** Under the wrappers that say nothing about the cause. */
  private static Throwable innermost(Throwable thrown) {
    boolean wrapper =
        thrown instanceof ServiceConfigurationError
            || thrown instanceof ExceptionInInitializerError
            || thrown instanceof InvocationTargetException;
    return wrapper && thrown.getCause() != null ? innermost(thrown.getCause()) : thrown;
  }
}
