package org.roastfield.core.outcome;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.TemperatureProfile;

/** A computed cook at the places of its grid: what all outcomes are read from. Immutable. */
public final class CookedCut {

  private final double exponent;
  private final TemperatureHistory core;
  private final double[] positions;
  private final List<TemperatureHistory> places;
  private final CrossSection highest;

  private CookedCut(
      double exponent,
      TemperatureHistory core,
      double[] positions,
      List<TemperatureHistory> places) {
    this.exponent = exponent;
    this.core = core;
    this.positions = positions;
    this.places = List.copyOf(places);
    this.highest = over(TemperatureHistory::highest);
  }

  /** Reads the places of a result, as far as it was computed. */
  public static CookedCut of(SimulationResult result) {
    TemperatureProfile profile = result.profile(result.endTime());
    double[] positions = new double[profile.size()];
    double[] steps = result.stepTimes();
    List<TemperatureHistory> places = new ArrayList<>();
    for (int i = 0; i < positions.length; i++) {
      positions[i] = profile.position(i);
      places.add(TemperatureHistory.of(result.place(positions[i]), steps));
    }
    return new CookedCut(
        result.cook().cut().shape().exponent(),
        TemperatureHistory.of(result.core(), steps),
        positions,
        places);
  }

  /** History of the middle. */
  public TemperatureHistory core() {
    return core;
  }

  /** Whether a slab's faces were treated apart. */
  public boolean isTwoFaced() {
    return positions[0] < 0;
  }

  /** Histories in the order of position. */
  public List<TemperatureHistory> places() {
    return places;
  }

  /** History of the surface, or the upper face. */
  public TemperatureHistory surface() {
    return places.get(places.size() - 1);
  }

  /** Where the highest temperature is least, distance from the middle [m]. */
  public double coldestPosition() {
    return positions[coldestIndex()];
  }

  /** History of the place whose highest temperature is least. */
  public TemperatureHistory coldest() {
    return places.get(coldestIndex());
  }

  /** History of the place with the least lethality by a table. */
  public TemperatureHistory leastLethal(HoldTable table) {
    return places.stream().min(Comparator.comparingDouble(table::lethality)).orElseThrow();
  }

  private int coldestIndex() {
    int coldest = 0;
    for (int i = 1; i < positions.length; i++) {
      if (highest.value(i) < highest.value(coldest)) {
        coldest = i;
      }
    }
    return coldest;
  }

  /** A number of each history over the cross-section. */
  public CrossSection over(ToDoubleFunction<TemperatureHistory> number) {
    return new CrossSection(exponent, positions, places.stream().mapToDouble(number).toArray());
  }

  /** Highest temperatures over the cross-section [K]. */
  public CrossSection highest() {
    return highest;
  }

  /** By the names of a scale. */
  public Doneness doneness(DonenessScale scale) {
    return Doneness.of(scale, highest);
  }

  /** Against published minima. */
  public Safety safety(CutKind kind) {
    return Safety.of(kind, places, isTwoFaced());
  }
}
