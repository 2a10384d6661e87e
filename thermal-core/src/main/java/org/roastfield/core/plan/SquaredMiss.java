package org.roastfield.core.plan;

import org.roastfield.core.internal.Check;

/** Weighted square of the distance from the middle of a wish, eq. (73). */
record SquaredMiss(double under, double over) implements CoreLoss {

  SquaredMiss {
    Check.positive("under", under);
    Check.positive("over", over);
  }

  @Override
  public double of(double finalCore, CoreWish wish) {
    double miss = finalCore - wish.middle();
    return (miss < 0 ? under : over) * miss * miss;
  }
}
