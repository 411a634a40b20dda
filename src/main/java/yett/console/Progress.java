package yett.console;

/** Shows the progress of a longer job. Close it when the job ends, finished or not. */
public interface Progress extends AutoCloseable {

  /** Counts one more step; steps beyond the total are not shown. */
  void step();

  @Override
  void close();
}
