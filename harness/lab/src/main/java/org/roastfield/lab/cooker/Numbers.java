package org.roastfield.lab.cooker;

import java.util.HashMap;
import java.util.Map;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterPoint;

/** Values of a cook's numbers: those of a point, and for others what changes nothing. */
final class Numbers {

  private final Map<String, Double> values = new HashMap<>();

  Numbers(ParameterPoint point) {
    for (int i = 0; i < point.size(); i++) {
      values.put(point.coordinate(i).name(), point.coordinate(i).value());
    }
  }

  double get(Parameter parameter) {
    Double value = values.get(parameter.id());
    return value == null ? CookParameters.neutral(parameter.id()) : value;
  }

  /** An offset of one probe. */
  double offset(String id) {
    return values.getOrDefault(id, 0.0);
  }
}
