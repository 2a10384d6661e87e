package org.roastfield.core.surface;

/**
 * One formula of a surface law evaluated for many faces at once, each with numbers of its own: what
 * {@link SurfaceLaw#evaluate} is to one face.
 *
 * <p>Stateless; laws that share the formula return the same instance from {@link
 * SurfaceLaw#rows()}. Loops over faces should be short, one operation after another on distinct
 * arrays, so that the just-in-time compiler turns them into vector instructions. The value for a
 * face must depend on that face's numbers alone.
 */
public interface LawRows {

  /** How many numbers a face has. */
  int numbers();

  /** How many rows of scratch memory {@link #evaluate} needs. */
  int scratchRows();

  /** Whether the laws of this formula do not change in time. */
  default boolean isSteady() {
    return false;
  }

  /**
   * Writes the numbers of a law.
   *
   * @param law one whose {@link SurfaceLaw#rows()} is this
   * @param numbers [numbers][faces], column {@code face} overwritten
   */
  void write(SurfaceLaw law, double[][] numbers, int face);

  /**
   * Computes what depends on time alone, into rows of scratch memory of its own; nothing for laws
   * that do not change in time. Called before {@link #evaluate} whenever times or numbers have
   * changed.
   *
   * @param faces how many of each row are in use
   * @param time [faces] since the start of the cook [s], not modified
   * @param numbers [numbers][faces], not modified
   * @param scratch [scratchRows][faces]
   */
  default void atTime(int faces, double[] time, double[][] numbers, double[][] scratch) {}

  /**
   * Evaluates all faces at the times of the last {@link #atTime}.
   *
   * @param faces how many of each row are in use
   * @param surfaceTemperature [faces] [K], not modified
   * @param numbers [numbers][faces], not modified
   * @param scratch [scratchRows][faces]; rows that {@link #atTime} does not use are overwritten
   * @param heatFlux [faces] [W/m²], positive into the food, overwritten
   * @param slope [faces] [W/(m²·K)], overwritten
   * @param evaporation [faces] [kg/(m²·s)], overwritten
   * @param evaporationSlope [faces] [kg/(m²·s·K)], overwritten
   */
  void evaluate(
      int faces,
      double[] surfaceTemperature,
      double[][] numbers,
      double[][] scratch,
      double[] heatFlux,
      double[] slope,
      double[] evaporation,
      double[] evaporationSlope);
}
