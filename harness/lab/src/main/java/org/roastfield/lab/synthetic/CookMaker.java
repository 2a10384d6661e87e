package org.roastfield.lab.synthetic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.core.material.Moisture;
import org.roastfield.core.simulation.Peak;
import org.roastfield.core.simulation.SimulationResult;
import org.roastfield.core.simulation.StageResult;
import org.roastfield.lab.files.Afterwards;
import org.roastfield.lab.files.ChannelFormat;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.Extent;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.files.LogFacts;
import org.roastfield.lab.files.LogPackage;
import org.roastfield.lab.files.LogUnit;
import org.roastfield.lab.synthetic.MadeCook.DepartureFact;
import org.roastfield.lab.synthetic.MadeCook.TrueMilestone;
import org.roastfield.lab.synthetic.MadeCook.TrueWeights;

/** Puts the log of a computed cook together. */
final class CookMaker {

  /** Error of a kitchen scale and of what clings to the cut, and its last digit [kg]; assumed. */
  private static final double SCALE_DEVIATION = 0.005;

  private static final double SCALE_STEPS_PER_KG = 200;

  private final SyntheticCook recipe;
  private final TrueValues values;
  private final TrueDeparture departure;
  private final MadeUpChamber chamber;
  private final TrueCook truth;
  private final SimulationResult result;
  private final double gentleEnd;

  CookMaker(
      SyntheticCook recipe,
      TrueValues values,
      TrueDeparture departure,
      MadeUpChamber chamber,
      TrueCook truth,
      SimulationResult result) {
    this.recipe = recipe;
    this.values = values;
    this.departure = departure;
    this.chamber = chamber;
    this.truth = truth;
    this.result = result;
    this.gentleEnd = result.stage(TrueCook.GENTLE).end();
  }

  MadeCook made() {
    Optional<TrueWeights> weights = weights();
    LogPackage log = log(weights.map(this::weighed));
    return new MadeCook(recipe, log, values, departureFacts(), milestones(), weights, result);
  }

  private Optional<TrueWeights> weights() {
    return recipe
        .cut()
        .whole(values.size(), departure.has(Departure.FINITE_LENGTH))
        .filter(whole -> lost(whole) < recipe.cut().water() * whole.mass())
        .map(whole -> new TrueWeights(whole.mass(), whole.mass() - lost(whole)));
  }

  private double lost(Extent whole) {
    Moisture moisture = result.cook().cut().material().moisture();
    return whole.evaporatedMass(result) + whole.drippedMass(result, moisture);
  }

  private Afterwards weighed(TrueWeights weights) {
    Noise noise = Noise.ofSeed(recipe.seed(), TrueValues.WEIGHTS_STREAM);
    return new Afterwards(
        OptionalDouble.of(shown(weights.before(), noise)),
        OptionalDouble.of(shown(weights.after(), noise)),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static double shown(double mass, Noise noise) {
    return Math.rint((mass + SCALE_DEVIATION * noise.normal()) * SCALE_STEPS_PER_KG)
        / SCALE_STEPS_PER_KG;
  }

  private LogPackage log(Optional<Afterwards> afterwards) {
    String title =
        recipe.cut().word().replace('-', ' ') + " on " + recipe.cooker().title() + ", made up";
    LogFacts facts =
        new LogFacts(
                recipe.id(),
                title,
                true,
                Optional.of("Apache-2.0"),
                Optional.empty(),
                List.of(
                    new LogFacts.Source(
                        "make-data, seed "
                            + recipe.seed()
                            + ": a computation, no such cook took place",
                        Optional.empty())))
            .on(recipe.cooker().id());
    return new LogPackage(
        facts,
        List.of(
            new ChannelFormat(CookLog.CHAMBER, LogUnit.CELSIUS, 1),
            new ChannelFormat(CookLog.CORE, LogUnit.CELSIUS, 1)),
        readings(),
        Optional.empty(),
        events(),
        List.of(),
        List.of(),
        afterwards,
        Optional.of(CookText.yaml(recipe)),
        CookText.source(recipe, title));
  }

  private CookLog readings() {
    double moved =
        departure.has(Departure.MOVED_PROBE)
            ? departure.movedAt() * gentleEnd
            : Double.POSITIVE_INFINITY;
    MadeUpReadings readings =
        new MadeUpReadings(
            recipe.cooker(), values, Noise.ofSeed(recipe.seed(), TrueValues.READINGS_STREAM));
    return readings.of(
        chamber.air(),
        gentleEnd,
        result.shownBy(truth.probe(values.probeOffset())),
        result.shownBy(
            truth.probe(
                departure.has(Departure.MOVED_PROBE) ? departure.movedTo() : values.probeOffset())),
        moved,
        result.endTime());
  }

  private List<LogEvent> events() {
    List<LogEvent> events = new ArrayList<>();
    for (MadeUpChamber.Span opening : chamber.openings()) {
      if (opening.ends() < gentleEnd) {
        events.add(
            event(LogEvent.Kind.LID_OPENED, opening.begins(), Math.rint(opening.ends()), ""));
      }
    }
    for (MadeUpChamber.Span sag : chamber.sags()) {
      if (sag.ends() < gentleEnd) {
        events.add(event(LogEvent.Kind.FUEL_ADDED, sag.ends(), Double.NaN, ""));
      }
    }
    double off = gentleEnd;
    if (recipe.cut().sear() > 0) {
      events.add(event(LogEvent.Kind.REMARK, gentleEnd, Double.NaN, "the sear begins"));
      off = result.stage(TrueCook.SEAR).end();
    }
    events.add(event(LogEvent.Kind.TAKEN_OFF, off, Double.NaN, ""));
    events.sort(Comparator.comparingDouble(LogEvent::time));
    return events;
  }

  private static LogEvent event(LogEvent.Kind kind, double time, double end, String note) {
    return new LogEvent(Math.rint(time), end, kind, LogEvent.Origin.COOK, note);
  }

  private List<DepartureFact> departureFacts() {
    List<DepartureFact> facts = new ArrayList<>();
    add(facts, "taper_position", departure.taperPosition());
    add(facts, "wetness", departure.wetness());
    add(facts, "gradient_K", departure.gradient());
    add(facts, "moved_at_s", departure.movedAt() * gentleEnd);
    add(facts, "moved_to_m", departure.movedTo());
    return facts;
  }

  private static void add(List<DepartureFact> facts, String name, double value) {
    if (!Double.isNaN(value)) {
      facts.add(new DepartureFact(name, value));
    }
  }

  private List<TrueMilestone> milestones() {
    List<TrueMilestone> milestones = new ArrayList<>();
    for (StageResult stage : result.stages()) {
      if (!stage.name().equals(TrueCook.REST)) {
        String what = stage.end() == TrueCook.LONGEST ? " given up" : " ends";
        milestones.add(new TrueMilestone(stage.name() + what, stage.end(), stage.coreAtEnd()));
      }
    }
    Peak peak = result.corePeak(result.stage(TrueCook.REST));
    milestones.add(new TrueMilestone("core highest", peak.time(), peak.temperature()));
    double end = result.endTime();
    milestones.add(new TrueMilestone("ready", end, result.core().at(end)));
    return milestones;
  }
}
