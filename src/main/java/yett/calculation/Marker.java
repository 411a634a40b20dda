package yett.calculation;

import java.util.Optional;

/**
 * Calculates where the reference marker on the chain is as the leaf goes from closed to open.
 * Lengths in m.
 *
 * <p>The chain moves with the leaf, past wheels that stay in place: the idler that the marker meets
 * first when the gate opens, the sprocket, the last idler. Places are counted along the chain from
 * that first idler, positive towards the last: below 0 the marker is still in the free run towards
 * the far bracket, from 0 to {@code wheels} it lies on the wheels, beyond that it has passed them.
 * The marker's place is d - (r - m) with the leaf open by d. Source: geometry.
 *
 * @param run r, from the far bracket to the first idler with the gate closed
 * @param marker m, from the far bracket to the marker
 * @param wheels along the chain from the first idler to the last
 * @param opening D, the way of the leaf from closed to open
 * @throws IllegalArgumentException if run, wheels or opening is not positive, or the marker
 *     negative
 */
public record Marker(double run, double marker, double wheels, double opening) {
  public Marker {
    Require.positive("run", run);
    Require.notNegative("marker", marker);
    Require.positive("wheels", wheels);
    Require.positive("opening", opening);
  }

  /** Place of the marker with the gate closed. */
  public double whenClosed() {
    return marker - run;
  }

  /** Place of the marker with the gate open. */
  public double whenOpen() {
    return whenClosed() + opening;
  }

  /**
   * How far (m) open the leaf is when the marker is at a place; empty if the marker does not reach
   * it between closed and open.
   */
  public Optional<Double> openAt(double place) {
    double open = place - whenClosed();
    return open >= 0 && open <= opening ? Optional.of(open) : Optional.empty();
  }

  /** How far (m) open the leaf is while the marker lies on the wheels; empty if it never does. */
  public Optional<Range> onWheels() {
    return whenOpen() < 0 || whenClosed() > wheels
        ? Optional.empty()
        : Optional.of(
            new Range(Math.max(0, -whenClosed()), Math.min(opening, wheels - whenClosed())));
  }

  /** The shortest distance (m) between the marker and the wheels; 0 if it runs over them. */
  public double clearance() {
    return Math.max(0, Math.max(-whenOpen(), whenClosed() - wheels));
  }

  /** Distance (m) of the marker from the wheels with the gate closed; 0 if it lies on them. */
  public double clearanceClosed() {
    return distanceToWheels(whenClosed());
  }

  /** Distance (m) of the marker from the wheels with the gate open; 0 if it lies on them. */
  public double clearanceOpen() {
    return distanceToWheels(whenOpen());
  }

  private double distanceToWheels(double place) {
    return Math.max(0, Math.max(-place, place - wheels));
  }
}
