package org.slatwright.cli.sizes;

import java.util.concurrent.Callable;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * Threads whose work is finished, not broken off, when the maker stops the program: what has begun
 * comes to its end, what waits is forgotten.
 */
public final class Workers implements AutoCloseable {

  private static final int LONGEST_WAIT_SECONDS = 60;

  private final ThreadPoolExecutor pool;
  private final Thread atExit = new Thread(this::finish);

  /** So many at once. */
  public Workers(int threads) {
    pool =
        new ThreadPoolExecutor(threads, threads, 0, TimeUnit.SECONDS, new LinkedBlockingQueue<>());
    Runtime.getRuntime().addShutdownHook(atExit);
  }

  /**
   * Hands over a task.
   *
   * @throws java.util.concurrent.RejectedExecutionException when the program is being stopped
   */
  public <T> Future<T> submit(Callable<T> task) {
    return pool.submit(task);
  }

  @Override
  public void close() {
    finish();
    try {
      Runtime.getRuntime().removeShutdownHook(atExit);
    } catch (IllegalStateException e) {
      // It is running at this moment, and waits for the same.
    }
  }

  private void finish() {
    pool.shutdown();
    pool.getQueue().clear();
    try {
      pool.awaitTermination(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
