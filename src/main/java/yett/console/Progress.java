package yett.console;

/** How far a longer job is. Close it when the job ends, finished or not. */
public interface Progress extends AutoCloseable {

  /** One more step is done; steps beyond the total are not shown. */
  void step();

  @Override
  void close();
}
