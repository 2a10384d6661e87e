package org.roastfield.core.plan;

import java.util.List;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.ensemble.BegunEnsemble;

/**
 * The way of draws up to a reading of their displays, on the fire as stated, computed once for all
 * that comes after it.
 *
 * @param reading [K]
 * @param legs ends of the gentle heat's legs up to it, one list a draw
 * @param begun where draws stand there
 * @param arrivals when they got there
 */
record Approach(double reading, List<List<StageEnd>> legs, BegunEnsemble begun, Arrivals arrivals) {

  /** How many draws came along. */
  int size() {
    return legs.size();
  }
}
