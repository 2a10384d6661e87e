/**
 * What happens inside a thick cut over live fire, computed from physics.
 *
 * <p>No I/O, no clock, no threads, no logging. Start at {@code
 * org.roastfield.core.simulation.Simulator}.
 */
module org.roastfield.core {
  requires static transitive org.jspecify;
  requires commons.math3;
  requires ejml.ddense;
  requires ejml.core;

  exports org.roastfield.core.units;
  exports org.roastfield.core.parameter;
  exports org.roastfield.core.shape;
  exports org.roastfield.core.material;
  exports org.roastfield.core.air;
  exports org.roastfield.core.surface;
  exports org.roastfield.core.chamber;
  exports org.roastfield.core.cook;
  exports org.roastfield.core.simulation;
  exports org.roastfield.core.ensemble;
  exports org.roastfield.core.outcome;
  exports org.roastfield.core.salting;
  exports org.roastfield.core.inference;
  exports org.roastfield.core.plan;
}
