package org.roastfield.core.simulation;

import java.util.ArrayList;
import java.util.List;
import org.roastfield.core.cook.Cut;
import org.roastfield.core.surface.DryingFace;

/** What goes through one face, summed over the steps of a computed cook. */
final class FaceSums {

  /** Heat [J/m²]. */
  double heat;

  /** Water that left as vapour [kg/m²]. */
  double water;

  /** Water that came from inside to a face that carries it [kg/m²]. */
  double fed;

  /** Most that can come [kg/m²]; 0 before a face carried any. */
  double mostFed;

  /** Water that evaporated while the face carried none [kg/m²]. */
  double aside;

  /** Whether a face of constant wetness came near to boiling. */
  boolean nextToBoiling;

  private final List<Drawn> drawn = new ArrayList<>();
  private double initial;

  /**
   * Water that the face drew out of the cut by the end of a step [kg/m²].
   *
   * @param time of the end [s]
   */
  record Drawn(int step, double time, double amount) {}

  List<Drawn> drawn() {
    return drawn;
  }

  /** Begins to carry water, if it did not before. */
  void begin(DryingFace law, Cut cut) {
    if (mostFed != 0) {
      return;
    }
    double kept = cut.material().moisture().kept() * cut.shape().volumePerArea();
    initial = kept == 0 ? law.water().capacity() : Math.min(kept, law.water().capacity());
    mostFed = kept == 0 ? Double.POSITIVE_INFINITY : kept - initial;
  }

  /**
   * Ends a step.
   *
   * @param held by the face, or missing in its crust if negative; 0 if it carries no water [kg/m²]
   */
  void end(int step, double time, double held) {
    drawn.add(new Drawn(step, time, aside + initial + fed + Math.max(0, -held)));
  }
}
