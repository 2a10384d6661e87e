package org.roastfield.lab.cooker;

import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;

/** Values of a cook's numbers: those of a point, and for others what changes nothing. */
final class Numbers {

  private final ParameterPoint point;

  Numbers(ParameterPoint point) {
    this.point = point;
  }

  double get(Parameter parameter) {
    String id = parameter.id();
    return point.has(id) ? point.value(id) : CookParameters.neutral(id);
  }

  /** An offset of one probe. */
  double offset(String id) {
    return point.has(id) ? point.value(id) : 0;
  }
}
