package org.roastfield.core.inference;

import java.util.List;
import java.util.function.Function;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.internal.Check;
import org.roastfield.core.parameter.ParameterPoint;

/**
 * A cook as a function of its unknown numbers, and what was measured of it.
 *
 * @param name for messages
 * @param own names by which {@code cooks} knows its numbers
 * @param ids of the parameters of the calibration that they are, in the same order: cooks on one
 *     cooker share some of them
 * @param cooks builds the cook at a point of its own names; one that cannot be built throws an
 *     {@link IllegalArgumentException}. Lasts until the last reading at least
 * @param traces logged
 * @param numbers read once
 */
public record ObservedCook(
    String name,
    List<String> own,
    List<String> ids,
    Function<ParameterPoint, Cook> cooks,
    List<ObservedTrace> traces,
    List<ObservedNumber> numbers) {

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException if names and ids are not as many, or nothing was measured
   */
  public ObservedCook {
    Check.notBlank("name", name);
    own = List.copyOf(own);
    ids = List.copyOf(ids);
    traces = List.copyOf(traces);
    numbers = List.copyOf(numbers);
    Check.inRange("number of ids", ids.size(), own.size(), own.size());
    if (traces.isEmpty() && numbers.isEmpty()) {
      throw new IllegalArgumentException(
          "traces and numbers of " + name + " must not both be none");
    }
  }
}
