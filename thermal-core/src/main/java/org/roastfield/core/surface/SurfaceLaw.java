package org.roastfield.core.surface;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How heat enters a face: flux and slope from surface temperature and time. Open: a caller's own
 * law is one method.
 *
 * <p>A law must be a pure function of its arguments, finite and continuous in surface temperature
 * wherever a face can be; where it has no value (a wet face above boiling) it adds NaN or an
 * infinite flux, and the solver steps back. A flux that falls with surface temperature keeps the
 * face's heat balance unique.
 */
@FunctionalInterface
public interface SurfaceLaw {

  /**
   * Adds this law's share to {@code flux}.
   *
   * @param surfaceTemperature Ts [K]
   * @param time since the start of the cook [s]
   * @param flux sum over laws, overwritten by addition
   */
  void evaluate(double surfaceTemperature, double time, SurfaceFlux flux);

  /** Shortest period of a fluctuation that matters [s], see {@link Signal#shortestPeriod()}. */
  default double shortestPeriod() {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * Highest face temperature at which the law has a value while the face holds water, as below
   * boiling [K]; infinite if there is none. Temperatures between steps are kept from passing it,
   * eq. (19).
   */
  default double highestTemperature() {
    return Double.POSITIVE_INFINITY;
  }

  /**
   * The law of a stage that begins at a time: what counts from the beginning of a stage, such as
   * contact, starts there.
   *
   * @param time since the start of the cook [s]
   */
  default SurfaceLaw from(double time) {
    return this;
  }

  /**
   * Whether the law depends on more than temperature and time: on when its stage began, or on what
   * a face carries along.
   */
  default boolean remembers() {
    return false;
  }

  /** Whether the face holds water that can be added to, as by basting. */
  default boolean holdsWater() {
    return false;
  }

  /**
   * The same surroundings of a cut that is larger by a factor: a correlation is measured by the
   * size of the cut. Laws that do not know their size are the same.
   *
   * @param factor of every length of the cut, greater than 0
   */
  default SurfaceLaw scaled(double factor) {
    return this;
  }

  /** The same law for many faces at once, or null if it can only be evaluated one by one. */
  default @Nullable LawRows rows() {
    return null;
  }

  /**
   * The same law on a face under a wrap, eq. (56).
   *
   * @throws IllegalArgumentException if the law does not say what a wrap does to it
   */
  default SurfaceLaw under(Wrap wrap) {
    throw new IllegalArgumentException(
        "law under " + wrap.name() + " must say what a wrap does to it, was " + this);
  }

  /**
   * Two laws that share a face, eq. (57), such as a hot band under a round cut that is rolled: the
   * mean over the circumference and over whole rounds. What is lost is the swing of each side: its
   * highest temperature, and with it browning and drying that a mean face does not reach.
   *
   * <p>Where one is a {@link DryingFace}, or both are and hold alike, the whole is one: its water
   * and crust are the mean of the circumference, and vapour leaves where the face dries; what boils
   * leaves everywhere.
   *
   * @param share of the face under {@code on}, in [0, 1]
   * @param on law of that share
   * @param off law of the rest
   * @throws IllegalArgumentException if the share is outside [0, 1], faces that dry do not hold
   *     alike, or another law carries something along
   */
  static SurfaceLaw shared(double share, SurfaceLaw on, SurfaceLaw off) {
    return SharedFace.of(share, on, off);
  }

  /** All of the given laws acting on one face. */
  static SurfaceLaw sum(SurfaceLaw... laws) {
    return new SumOfLaws(List.of(laws));
  }

  /** A face through which no heat passes. */
  static SurfaceLaw insulated() {
    return new SumOfLaws(List.of());
  }
}
