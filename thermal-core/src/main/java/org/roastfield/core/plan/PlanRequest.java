package org.roastfield.core.plan;

import java.util.List;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.internal.Check;

/**
 * What is to be planned.
 *
 * @param cook what is cooked and how
 * @param prior what is believed of the cook's parameters: a cooker's posterior, or the priors
 * @param wish of the final core where the probe is meant to be
 * @param loss of missing it, the mean over all stations
 * @param minima demanded of the coldest final core, perhaps none
 * @param service when it is carved
 * @param stations other cross-sections with wishes of their own, perhaps none
 * @param preparations decided by the clock before the cook begins, perhaps none
 * @param members draws, at least 20
 * @param seed of the draws
 */
public record PlanRequest(
    PlannedCook cook,
    Prior prior,
    CoreWish wish,
    CoreLoss loss,
    List<Minimum> minima,
    Service service,
    List<Station> stations,
    List<Preparation> preparations,
    int members,
    long seed) {

  /** Draws if nothing else is said. */
  public static final int USUAL_MEMBERS = 2000;

  /**
   * @throws IllegalArgumentException if there are fewer than 20 members, or minima beside a window
   *     that is kept: getting to them may take longer
   */
  public PlanRequest {
    minima = List.copyOf(minima);
    stations = List.copyOf(stations);
    preparations = List.copyOf(preparations);
    Check.inRange("members", members, 20, 1_000_000);
    if (service.kept() && !minima.isEmpty()) {
      throw new IllegalArgumentException(
          "minima must be none beside a window that is kept, were " + minima);
    }
  }

  /** The usual loss and service, no minima, 2000 members, seed 1. */
  public static PlanRequest of(PlannedCook cook, Prior prior, CoreWish wish) {
    return new PlanRequest(
        cook,
        prior,
        wish,
        CoreLoss.usual(),
        List.of(),
        Service.usual(),
        List.of(),
        List.of(),
        USUAL_MEMBERS,
        1);
  }

  /** The same of another cook. */
  public PlanRequest with(PlannedCook cook) {
    return new PlanRequest(
        cook, prior, wish, loss, minima, service, stations, preparations, members, seed);
  }

  /** The same with other beliefs. */
  public PlanRequest with(Prior prior) {
    return new PlanRequest(
        cook, prior, wish, loss, minima, service, stations, preparations, members, seed);
  }

  /** The same with another wish. */
  public PlanRequest with(CoreWish wish) {
    return new PlanRequest(
        cook, prior, wish, loss, minima, service, stations, preparations, members, seed);
  }

  /** The same with another loss. */
  public PlanRequest with(CoreLoss loss) {
    return new PlanRequest(
        cook, prior, wish, loss, minima, service, stations, preparations, members, seed);
  }

  /** The same with other minima. */
  public PlanRequest withMinima(List<Minimum> minima) {
    return new PlanRequest(
        cook, prior, wish, loss, minima, service, stations, preparations, members, seed);
  }

  /** The same for another service. */
  public PlanRequest with(Service service) {
    return new PlanRequest(
        cook, prior, wish, loss, minima, service, stations, preparations, members, seed);
  }

  /** The same with other stations. */
  public PlanRequest withStations(List<Station> stations) {
    return new PlanRequest(
        cook, prior, wish, loss, minima, service, stations, preparations, members, seed);
  }

  /** The same with other preparations. */
  public PlanRequest withPreparations(List<Preparation> preparations) {
    return new PlanRequest(
        cook, prior, wish, loss, minima, service, stations, preparations, members, seed);
  }

  /** The same with other draws. */
  public PlanRequest withDraws(int members, long seed) {
    return new PlanRequest(
        cook, prior, wish, loss, minima, service, stations, preparations, members, seed);
  }
}
