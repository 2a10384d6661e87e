package org.roastfield.core.integration;

import org.jspecify.annotations.Nullable;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.grid.Reading;
import org.roastfield.core.surface.FaceWater;

/** What a result is made of, beside its steps. */
public interface ComputedCook {

  /** Time reached [s]. */
  double time();

  /** Reading of a probe. */
  Reading reading(Probe probe);

  /**
   * Reading at a distance from the middle [m]; in a slab with different faces negative towards the
   * lower one.
   */
  Reading readingAt(double distance);

  /** What ξ = 1 stands for in the real piece [m]. */
  double extent();

  /** Temperature of a reading now [K]. */
  double now(Reading reading);

  /** Change of enthalpy since the start [J/m²]. */
  double stored();

  /** Heat taken in through the upper face [J/m²]. */
  double throughUpper();

  /** Heat taken in through the lower face [J/m²]. */
  double throughLower();

  /** Sum over steps of the absolute heat through the faces [J/m²]. */
  double turnover();

  /** Water evaporated from the upper face [kg/m²]. */
  double evaporatedUpper();

  /** Water evaporated from the lower face [kg/m²]. */
  double evaporatedLower();

  /**
   * Water of a face since its first stage with memory, or null if its laws never remembered.
   *
   * @param upper whether it is the upper face
   */
  @Nullable FaceWater faceWater(boolean upper);

  /**
   * Water of a face over the whole cook.
   *
   * @param upper whether it is the upper face
   */
  CarriedWater carriedWater(boolean upper);

  /**
   * Humidity ratio of the air around a face now, as its vapour makes it [kg/kg]; 0 if its law does
   * not say.
   *
   * @param upper whether it is the upper face
   */
  double humidityRatio(boolean upper);

  /** Steps that stand. */
  long acceptedSteps();

  /** Steps that were repeated. */
  long rejectedSteps();

  /** Tridiagonal solves. */
  long solves();

  /** Factorisations. */
  long factorisations();

  /** Evaluations of a face's laws. */
  long fluxEvaluations();
}
