package org.roastfield.core.ensemble;

import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.integration.CookVariation;
import org.roastfield.core.integration.CookVariations;
import org.roastfield.core.parameter.ParameterPoint;

/** Members that are cooks at points. */
final class VariedQueue extends MemberQueue {

  private final IntFunction<ParameterPoint> points;
  private final IntFunction<Function<ParameterPoint, Cook>> cooks;
  private final int parameters;

  VariedQueue(
      int members,
      int stages,
      IntFunction<ParameterPoint> points,
      IntFunction<Function<ParameterPoint, Cook>> cooks,
      int parameters,
      Cancellation cancellation) {
    super(members, stages, member -> cooks.apply(member).apply(points.apply(member)), cancellation);
    this.points = points;
    this.cooks = cooks;
    this.parameters = parameters;
  }

  @Override
  public List<CookVariation> variations(int member, Cook built) {
    ParameterPoint point = points.apply(member);
    if (point.size() != parameters) {
      throw new IllegalArgumentException(
          "all members must have as many parameters as the first, "
              + parameters
              + ", but member "
              + member
              + " has "
              + point.size());
    }
    return CookVariations.around(point, built, cooks.apply(member));
  }
}
