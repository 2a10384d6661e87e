package org.roastfield.core.cook;

import org.roastfield.core.internal.Check;
import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;

/**
 * A place whose temperature is asked for, and the instrument that shows it.
 *
 * @param name unique in a cook
 * @param depth of the tip below the surface [m]; in a slab, below the upper face. {@link
 *     Double#POSITIVE_INFINITY} stands for the core
 * @param offset by how much a tip meant for the core misses the middle [m]: at least 0; in a slab
 *     positive towards the upper face. 0 for probes of a given depth
 * @param instrument what its display makes of the temperature at the tip
 */
public record Probe(String name, double depth, double offset, Instrument instrument) {

  /** Lengths that differ by less are one length, written in different units. */
  private static final double ROUNDING = 1e-9;

  /** The middle of the cut. */
  public static final Probe CORE = new Probe("core", Double.POSITIVE_INFINITY);

  /** The surface; in a slab, the upper face. */
  public static final Probe SURFACE = new Probe("surface", 0);

  /**
   * @throws IllegalArgumentException if the name is blank, the depth is negative or NaN, the offset
   *     is not finite, or a probe of given depth has one
   */
  public Probe {
    Check.notBlank("name", name);
    if (!(depth >= 0)) {
      throw new IllegalArgumentException("depth must be at least 0, was " + depth);
    }
    Check.finite("offset", offset);
    if (offset != 0 && depth != Double.POSITIVE_INFINITY) {
      throw new IllegalArgumentException(
          "offset must be 0 for a probe of given depth, was " + offset);
    }
  }

  /** Ideal probe, without lag or error. */
  public Probe(String name, double depth) {
    this(name, depth, 0, Instrument.IDEAL);
  }

  /** Ideal probe with its tip at a depth [m] below the surface. */
  public static Probe atDepth(String name, double depth) {
    return new Probe(name, Check.notNegative("depth", depth));
  }

  /** Ideal probe meant for the core that misses it by an offset [m]. */
  public static Probe besideCore(String name, double offset) {
    return new Probe(name, Double.POSITIVE_INFINITY, offset, Instrument.IDEAL);
  }

  /** The same place read by another instrument. */
  public Probe with(Instrument instrument) {
    return new Probe(name, depth, offset, instrument);
  }

  /** Whether this is the middle of the cut, whatever its size. */
  public boolean isCore() {
    return depth == Double.POSITIVE_INFINITY && offset == 0;
  }

  /**
   * Distance from the middle of a shape [m]; in a slab positive towards the upper face.
   *
   * @throws IllegalArgumentException if the probe would come out on the other side (a slab), or lie
   *     beyond the middle (other shapes)
   */
  public double distanceFromMiddle(Shape shape) {
    double half = shape.halfThickness();
    boolean slab = shape instanceof Slab;
    if (depth == Double.POSITIVE_INFINITY) {
      return Check.inRange("offset of probe " + name, offset, slab ? -half : 0, half);
    }
    return half - Check.inRange("depth of probe " + name, depth, 0, slab ? 2 * half : half);
  }

  /**
   * How far the stem reaches into a shape [m]: as stated, or by the shortest way from the surface;
   * in a slab from the upper face.
   *
   * @throws IllegalArgumentException as {@link #distanceFromMiddle}, or if the stem is too short
   *     for eq. (52), or stated to be shorter than the shortest way
   */
  public double insertion(Shape shape) {
    double insertion = way(shape);
    double least = Stem.SHALLOWEST * instrument.stem().finLength();
    if (!(insertion >= least)) {
      throw new IllegalArgumentException(
          "insertion of probe "
              + name
              + " must be at least "
              + Stem.SHALLOWEST
              + " fin lengths, "
              + least
              + " m, was "
              + insertion
              + " m; put it in deeper, or along the cut");
    }
    return insertion;
  }

  private double way(Shape shape) {
    double middle = distanceFromMiddle(shape);
    double stated = instrument.stem().inserted();
    if (stated == 0) {
      return shape.halfThickness() - middle;
    }
    double shortest = shape.halfThickness() - Math.abs(middle);
    if (!(stated >= shortest * (1 - ROUNDING))) {
      throw new IllegalArgumentException(
          "inserted of probe "
              + name
              + " must be at least the depth of its tip, "
              + shortest
              + " m, was "
              + stated
              + " m");
    }
    return stated;
  }
}
