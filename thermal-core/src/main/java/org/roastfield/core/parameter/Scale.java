package org.roastfield.core.parameter;

/** The scale on which a parameter's prior is normal. */
public enum Scale {
  /** The natural logarithm of the value: multipliers and whatever is positive. */
  LOGARITHM {
    @Override
    public double coordinate(double value) {
      return StrictMath.log(value);
    }

    @Override
    public double value(double coordinate) {
      return StrictMath.exp(coordinate);
    }
  },
  /** The value itself: offsets. */
  PLAIN {
    @Override
    public double coordinate(double value) {
      return value;
    }

    @Override
    public double value(double coordinate) {
      return coordinate;
    }
  };

  /** Coordinate of a value on this scale. */
  public abstract double coordinate(double value);

  /** Value at a coordinate on this scale. */
  public abstract double value(double coordinate);
}
