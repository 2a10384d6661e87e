package org.roastfield.lab.files;

import org.roastfield.core.shape.Shape;
import org.roastfield.core.shape.Slab;

/** Which part of a cut that lies in its chamber a statement is about. */
enum Side {
  /** Upper face of a slab. */
  UPPER,
  /** Lower face of a slab. */
  LOWER,
  /** Whole surface of a round cut. */
  ALL_ROUND;

  static Side upperOf(Shape shape) {
    return shape instanceof Slab ? UPPER : ALL_ROUND;
  }

  static Side lowerOf(Shape shape) {
    return shape instanceof Slab ? LOWER : ALL_ROUND;
  }
}
