package org.roastfield.lab.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.roastfield.core.outcome.CutKind;
import org.roastfield.core.outcome.Finding;
import org.roastfield.core.outcome.PublishedMinimum;
import org.roastfield.core.plan.Minimum;
import org.roastfield.core.plan.Plan;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.timeline.Caution;
import org.roastfield.lab.timeline.Cautions;
import org.roastfield.lab.timeline.TemperatureScale;

/** What stands beside the numbers of a plan: cautions of its expected cook, and of its draws. */
final class PlanCautions {

  /** A wait that gets its caution [s]; assumed. */
  private static final double WAIT_WORTH_A_WORD = 600;

  private final CookFile file;
  private final Plan plan;
  private final PlanRequest request;
  private final TemperatureScale scale;

  PlanCautions(CookFile file, Plan plan, PlanRequest request, TemperatureScale scale) {
    this.file = file;
    this.plan = plan;
    this.request = request;
    this.scale = scale;
  }

  /**
   * All of them.
   *
   * @param central the expected cook, if it comes to its end
   * @param keepings what becomes of it if it is early
   * @param held how long it is then kept [s]
   */
  List<Caution> list(Optional<SimulationResult> central, List<Keeping> keepings, double held) {
    List<Caution> cautions =
        new ArrayList<>(
            central
                .map(result -> Cautions.of(file, result, scale))
                .orElseGet(
                    () -> Cautions.withoutResult(file, PlanSentences.notHeldAgainst(plan, scale))));
    cautions.addAll(1 + lastOf(Cautions.MINIMUM, cautions), overDraws(central));
    if (plan.held().high() > WAIT_WORTH_A_WORD) {
      cautions.add(plan.waits() ? Cautions.WAITING : kept(keepings, held));
    }
    return List.copyOf(cautions);
  }

  /** Index of the last of a subject; 0 if there is none. */
  private static int lastOf(String subject, List<Caution> cautions) {
    return IntStream.range(0, cautions.size())
        .filter(i -> cautions.get(i).subject().equals(subject))
        .max()
        .orElse(0);
  }

  /** How many draws get to each published minimum in the middle. */
  private List<Caution> overDraws(Optional<SimulationResult> central) {
    double expected = central.map(CentralCook::finalCore).orElse(Double.POSITIVE_INFINITY);
    Map<Double, PublishedMinimum> minima = new LinkedHashMap<>();
    for (CutKind kind : file.food().kinds(file.notes().handling())) {
      PublishedMinimum.of(kind).forEach(one -> minima.putIfAbsent(one.temperature(), one));
    }
    return minima.values().stream().map(one -> overDraws(one, expected)).toList();
  }

  /**
   * Pressing where more draws miss it than the chance of a demanded minimum leaves, or else that of
   * being on time, unless the expected cook does, which is told already.
   *
   * @param expected final core of that cook [K]
   */
  private Caution overDraws(PublishedMinimum minimum, double expected) {
    double chance = plan.chanceOf(minimum.temperature());
    double asked =
        request.minima().stream()
            .mapToDouble(Minimum::chance)
            .findFirst()
            .orElse(request.service().chance());
    boolean pressing = chance < asked && expected >= minimum.temperature();
    String what = scale.text(minimum.temperature()) + ", the published minimum for " + minimum.of();
    String text =
        pressing
            ? "In "
                + Words.chance(1 - chance, plan.members())
                + " of the draws the middle does NOT get to "
                + what
                + "."
            : "In "
                + Words.chance(chance, plan.members())
                + " of the draws the middle gets to "
                + what
                + ", if only for a moment.";
    return new Caution(
        Cautions.MINIMUM + " of " + scale.text(minimum.temperature()) + ", over draws",
        text + " " + Finding.DEFERENCE,
        minimum.source());
  }

  /** A cut that is kept after its rest, perhaps colder than hot food is held. */
  private Caution kept(List<Keeping> keepings, double held) {
    double minimum = Keeping.minimum(file);
    String whose =
        file.notes().plan().holdMinimum().isPresent()
            ? " of hold-minimum."
            : " at which food codes have hot food held.";
    String text =
        keepings.stream()
            .findFirst()
            .filter(one -> one.carved() < minimum)
            .map(
                one ->
                    "Kept for "
                        + Words.duration(held)
                        + " after its rest it is carved at "
                        + scale.text(one.carved())
                        + " in the middle, BELOW the "
                        + scale.text(minimum)
                        + whose
                        + " ")
            .orElse("");
    return Cautions.kept(text);
  }
}
