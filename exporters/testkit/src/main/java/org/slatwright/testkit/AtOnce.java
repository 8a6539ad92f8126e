package org.slatwright.testkit;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Runs a task in several threads that start together. */
final class AtOnce {

  private AtOnce() {}

  static <T> List<T> run(int threads, Callable<T> task) {
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    CountDownLatch ready = new CountDownLatch(threads);
    try {
      List<Future<T>> running = new ArrayList<>();
      for (int i = 0; i < threads; i++) {
        running.add(
            pool.submit(
                () -> {
                  ready.countDown();
                  ready.await();
                  return task.call();
                }));
      }
      List<T> results = new ArrayList<>();
      for (Future<T> one : running) {
        results.add(one.get());
      }
      return results;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    } catch (ExecutionException e) {
      throw new AssertionError("failed when run at once with others", e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }
}
