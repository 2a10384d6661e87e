package org.roastfield.core.inference;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/** Small matrices in a few words. */
final class Matrices {

  private Matrices() {}

  static RealVector vector(double[] of) {
    return new ArrayRealVector(of);
  }

  static RealMatrix matrix(double[][] of) {
    return new Array2DRowRealMatrix(of);
  }

  static RealMatrix identity(int size) {
    return MatrixUtils.createRealIdentityMatrix(size);
  }

  /** A·M·Aᵀ. */
  static RealMatrix sandwich(RealMatrix a, RealMatrix m) {
    return a.multiply(m).multiply(a.transpose());
  }

  static RealMatrix inverse(RealMatrix of) {
    return new LUDecomposition(of).getSolver().getInverse();
  }

  /** Without what rounding has made of the two halves. */
  static RealMatrix symmetric(RealMatrix of) {
    return of.add(of.transpose()).scalarMultiply(0.5);
  }
}
