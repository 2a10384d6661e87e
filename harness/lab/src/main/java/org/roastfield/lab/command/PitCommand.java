package org.roastfield.lab.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.chamber.FireDemand;
import org.roastfield.core.chamber.FireParameters;
import org.roastfield.core.chamber.FirePit;
import org.roastfield.core.chamber.Outside;
import org.roastfield.core.inference.MapEstimate;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.units.Temperatures;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.files.LogPackageReader;
import org.roastfield.lab.files.PitKind;
import org.roastfield.lab.pit.PitDraws;
import org.roastfield.lab.pit.PitLog;
import org.roastfield.lab.timeline.TemperatureScale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What a fire needs, from priors or from a log of its gas. */
@Command(
    name = "pit",
    mixinStandardHelpOptions = true,
    description = {
      "Says what a fire needs: how long until it is warm and fit for a sear, how much charcoal.",
      "With a log of a chamber, says what that tells of the pit, and uses it."
    })
final class PitCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--like",
      paramLabel = "PIT",
      required = true,
      description = "thin-steel, brick-and-steel or ceramic.")
  private String like = "";

  @Option(
      names = "--setting",
      paramLabel = "TEMPERATURE",
      required = true,
      converter = QuantityConverters.Temperature.class,
      description = "Gentle heat, such as \"110 °C\".")
  private double setting;

  @Option(
      names = "--for",
      paramLabel = "TIME",
      required = true,
      converter = QuantityConverters.Time.class,
      description = "How long the cut is on the gentle heat.")
  private double gentle;

  @Option(
      names = "--sear",
      paramLabel = "TEMPERATURE",
      converter = QuantityConverters.Temperature.class,
      description = "Gas to sear in under the lid, for ten minutes (default: no sear).")
  private Optional<Double> sear = Optional.empty();

  @Option(
      names = "--glowing",
      paramLabel = "MASS",
      converter = QuantityConverters.Mass.class,
      description = "Coals that glow when they go in (default: 0.4, 1 or 0.6 kg by pit).")
  private Optional<Double> glowing = Optional.empty();

  @Option(
      names = "--outside",
      paramLabel = "TEMPERATURE",
      converter = QuantityConverters.Temperature.class,
      description = "Air outside (default: 15 °C).")
  private double outside = Temperatures.celsius(15);

  @Option(names = "--wind", paramLabel = "M/S", description = "Wind in m/s (default: 0).")
  private double wind;

  @Option(
      names = "--log",
      paramLabel = "LOG",
      description = "Log package, or readings, with a chamber channel.")
  private Optional<Path> log = Optional.empty();

  @Option(names = "--starts", paramLabel = "N", description = "Searches in the log (default: 4).")
  private int starts = 4;

  @Option(names = "--members", paramLabel = "N", description = "Draws (default: 400).")
  private int members = 400;

  @Option(names = "--seed", paramLabel = "N", description = "Seed of the draws (default: 1).")
  private long seed = 1;

  @Option(names = "--fahrenheit", description = "Show °F on screen instead of °C.")
  private boolean fahrenheit;

  PitCommand() {}

  @Override
  public Integer call() throws IOException {
    PrintWriter screen = spec.commandLine().getOut();
    try {
      screen.print(text());
    } catch (IllegalArgumentException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
    screen.flush();
    return 0;
  }

  private String text() throws IOException {
    PitKind kind = kind();
    Outside weather = new Outside(outside, wind, 0.007, MoistAir.STANDARD_PRESSURE);
    double coals = glowing.orElse(kind.glowing());
    FireDemand demand =
        FireDemand.gentle(weather, coals, setting, gentle).withLoad(PitDraws.USUAL_LOAD);
    if (sear.isPresent()) {
      demand = demand.withSear(new FireDemand.Sear(FireDemand.Sear.Place.COVERED, sear.get(), 600));
    }
    TemperatureScale scale = fahrenheit ? TemperatureScale.FAHRENHEIT : TemperatureScale.CELSIUS;
    PitText text = new PitText(kind, demand, scale);
    ParameterSet known = FireParameters.ofPit();
    Prior belief = Prior.of(known);
    if (log.isPresent()) {
      PitLog learned = read(log.get(), kind.pit(), weather, coals);
      MapEstimate found = learned.estimate(starts);
      if (!found.isFound()) {
        throw new IllegalArgumentException(
            "the log could not be explained by such a pit; is --like right?");
      }
      text.log(learned, found);
      known = learned.parameters();
      belief = found.asPrior();
    }
    return text.needs(draws(kind.pit(), known, belief));
  }

  private PitKind kind() {
    return PitKind.of(like)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "--like must be thin-steel, brick-and-steel or ceramic, was \"" + like + "\""));
  }

  private static PitLog read(Path path, FirePit pit, Outside weather, double coals)
      throws IOException {
    List<LogEvent> events =
        LogPackageReader.isFolder(path) ? LogPackageReader.read(path).events() : List.of();
    return PitLog.of(LogInput.read(path).log(), events, pit, weather, coals);
  }

  private List<FirePit> draws(FirePit pit, ParameterSet known, Prior belief) {
    if (members < 20 || members > 100_000) {
      throw new IllegalArgumentException("--members must be 20 to 100000, was " + members);
    }
    return PitDraws.of(pit, known, belief, members, seed);
  }
}
