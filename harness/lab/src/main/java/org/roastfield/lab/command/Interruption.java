package org.roastfield.lab.command;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/**
 * Lets a long computation end itself when the process is told to stop, as by Ctrl-C, and write what
 * it has; the process waits for that.
 */
final class Interruption implements AutoCloseable {

  private static final int MOST_SECONDS = 20;

  private final CountDownLatch done = new CountDownLatch(1);
  private final Thread hook = new Thread(this::stop, "stop");
  private volatile boolean stopped;

  /** A computation that was told to stop. */
  static final class Stopped extends RuntimeException {

    private static final long serialVersionUID = 1;

    Stopped() {
      super("stopped");
    }
  }

  private Interruption() {}

  static Interruption ofProcess() {
    Interruption interruption = new Interruption();
    Runtime.getRuntime().addShutdownHook(interruption.hook);
    return interruption;
  }

  private void stop() {
    stopped = true;
    try {
      if (!done.await(MOST_SECONDS, TimeUnit.SECONDS)) {
        System.err.println("roastfield: still computing, so nothing was written");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** Throws if the process was told to stop. */
  void check() {
    if (stopped) {
      throw new Stopped();
    }
  }

  @Override
  public void close() {
    done.countDown();
    if (!stopped) {
      Runtime.getRuntime().removeShutdownHook(hook);
    }
  }
}
