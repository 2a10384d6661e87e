package org.roastfield.lab.plan;

import org.roastfield.core.plan.WhatIf;

/**
 * What a change does to a cook that follows the plan.
 *
 * @param what changes
 * @param effect on it
 */
public record PlanChange(String what, WhatIf.Effect effect) {

  /** How it was found, in words. */
  public String method() {
    return switch (effect.method()) {
      case SENSITIVITY -> "derivative";
      case FEW_DRAWS -> "few draws";
      case ALL_DRAWS -> "draws";
    };
  }
}
