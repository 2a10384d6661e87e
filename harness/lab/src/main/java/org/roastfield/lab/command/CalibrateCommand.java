package org.roastfield.lab.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import org.roastfield.core.inference.LikelihoodProfile;
import org.roastfield.core.inference.Prior;
import org.roastfield.core.parameter.CookParameters;
import org.roastfield.core.parameter.Owner;
import org.roastfield.core.parameter.Parameter;
import org.roastfield.core.parameter.ParameterSet;
import org.roastfield.core.simulation.Simulator;
import org.roastfield.lab.cooker.CookerProfile;
import org.roastfield.lab.cooker.CookerProfileJson;
import org.roastfield.lab.cooker.CookerSearch;
import org.roastfield.lab.cooker.LogSpan;
import org.roastfield.lab.cooker.LoggedCase;
import org.roastfield.lab.cooker.NamedCooker;
import org.roastfield.lab.diagnosis.Calibrated;
import org.roastfield.lab.diagnosis.Finding;
import org.roastfield.lab.diagnosis.Findings;
import org.roastfield.lab.diagnosis.Inquiry;
import org.roastfield.lab.diagnosis.Source;
import org.roastfield.lab.diagnosis.Verdict;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.CookerProfileFile;
import org.roastfield.lab.heldout.LaterReadings;
import org.roastfield.lab.report.CalibrationReport;
import org.roastfield.lab.result.AtomicFile;
import org.roastfield.lab.result.Inputs;
import org.roastfield.lab.result.ManifestJson;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.result.Version;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Learns a cooker from logged cooks. */
@Command(
    name = "calibrate",
    mixinStandardHelpOptions = true,
    description = {
      "Learns a cooker from logged cooks on it: a profile for plan and replay, with what is not"
          + " known, and findings on what the logs can and cannot tell.",
      "Logs are packages with a cook file, as take-in and make-data write them."
    })
final class CalibrateCommand implements Callable<Integer> {

  private static final int MOST_STARTS = 64;

  /**
   * Behind the name of a profile whose search was stopped, which never takes a finished one's
   * place.
   */
  private static final String PARTIAL = "-partial";

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(
      arity = "1..*",
      paramLabel = "LOG",
      description = "Log packages, or folders of log packages.")
  private List<Path> folders = new ArrayList<>();

  @Option(
      names = "--out",
      paramLabel = "COOKER.json",
      description =
          "Where the profile goes; its report and manifest go beside it (default: cooker.json).")
  private Path out = Path.of("cooker.json");

  @Option(
      names = "--cooker",
      paramLabel = "COOKER.json",
      description = "What is known of the cooker from other logs.")
  private Optional<Path> before = Optional.empty();

  @Mixin private AmongOption among = new AmongOption();

  @Option(
      names = "--free",
      paramLabel = "NAME",
      split = ",",
      description =
          "Numbers to find, such as convection,size; the others stay as stated (default: all).")
  private List<String> free = new ArrayList<>();

  @Option(
      names = "--starts",
      paramLabel = "N",
      description = "Searches, from different starts (default: ${DEFAULT-VALUE}).")
  private int starts = 4;

  @Option(
      names = "--draws",
      description = "Weigh draws in any case, not only where the normal approximation will not do.")
  private boolean draws;

  @Option(
      names = "--profiles",
      description =
          "Say too what the logs tell of each number of the cooker without what was believed of it"
              + " (some ten fits a number).")
  private boolean profiles;

  @Option(names = "--seed", paramLabel = "N", description = "Seed of the draws (default: 1).")
  private long seed = 1;

  @Option(
      names = "--until",
      paramLabel = "TIME",
      converter = QuantityConverters.Time.class,
      description = "Leave out what each log says later, such as 3h.")
  private Optional<Double> until = Optional.empty();

  @Option(
      names = "--first",
      paramLabel = "SHARE",
      converter = QuantityConverters.Share.class,
      description = {
        "Learn from the first share of each log's time alone, such as 40%%, and say how the rest lies",
        "in what is foretold of it."
      })
  private Optional<Double> first = Optional.empty();

  @Option(names = "--json", description = "Print the profile instead of the summary.")
  private boolean json;

  @Mixin private AccuracyOptions accuracy = new AccuracyOptions();

  CalibrateCommand() {}

  @Override
  public Integer call() throws IOException {
    if (starts < 1 || starts > MOST_STARTS) {
      throw new BadInputException("--starts must be from 1 to " + MOST_STARTS + ", was " + starts);
    }
    if (first.isPresent() && !(first.get() > 0 && first.get() < 1)) {
      throw new BadInputException(
          "--first must be above 0 % and below 100 %, was " + 100 * first.get() + " %");
    }
    String id = id();
    OutputFolder.checkFile(out);
    try (Interruption interruption = Interruption.ofProcess()) {
      return learned(id, interruption);
    } catch (IllegalArgumentException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
  }

  private int learned(String id, Interruption interruption) throws IOException {
    Optional<CookerProfile> known = known();
    List<PackageInput> inputs = new ArrayList<>();
    for (Path folder : PackageInput.among(folders, 1)) {
      inputs.add(PackageInput.read(folder));
    }
    PackageInput.refuseTwice(known, inputs);
    AmongOption.Read others = among.read(inputs.stream().map(PackageInput::hash).toList());
    List<Finding> said = new ArrayList<>(unnamed(inputs));
    Findings.older(known).ifPresent(said::add);
    PrintWriter err = spec.commandLine().getErr();
    boolean shown = Terminal.ofProcess().isPresent();
    SearchProgress bar = new SearchProgress(err, shown, starts, draws);
    CookerSearch search = search(known, bar, interruption);
    if (among.isAsked()) {
      search = search.among(others.cookers());
      said.add(
          Findings.among(others.used().stream().map(CookerProfile::id).toList(), others.leftOut()));
    }
    Optional<Calibrated> calibrated = calibrated(search, id, inputs, said);
    bar.end();
    if (calibrated.isEmpty()) {
      err.println(
          "roastfield: stopped before its first search had ended: nothing could be known of the"
              + " cooker yet, so nothing was written; let it run longer, or give fewer logs");
      err.flush();
      return 1;
    }
    finish(calibrated.get(), inputs, others.entries());
    return 0;
  }

  private String id() {
    String name = String.valueOf(out.getFileName());
    if (!name.matches("[a-z][a-z0-9-]{0,51}\\.json")) {
      throw new BadInputException(
          "--out must end in a name of at most 52 characters, words in lower case joined by hyphens,"
              + " and .json, such as slipway-pit.json, was "
              + out);
    }
    return name.replaceFirst("\\.json$", "");
  }

  private Optional<CookerProfile> known() throws IOException {
    return before.isPresent()
        ? Optional.of(CookerProfileJson.read(CookerProfileFile.read(before.get())))
        : Optional.empty();
  }

  /** Logs of different cookers are refused; those that name none are said. */
  private static List<Finding> unnamed(List<PackageInput> inputs) {
    Map<String, Optional<String>> cookers = new LinkedHashMap<>();
    try {
      for (PackageInput input : inputs) {
        cookers.put(input.log().facts().name(), NamedCooker.of(input.cook(), input.log()));
      }
      return Findings.unnamed(NamedCooker.one(cookers)).stream().toList();
    } catch (IllegalArgumentException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
  }

  private CookerSearch search(
      Optional<CookerProfile> known, SearchProgress bar, Interruption interruption) {
    return new CookerSearch(
        known, freedom(), Simulator.with(accuracy.settings()), bar::tell, interruption::check);
  }

  private Predicate<Parameter> freedom() {
    if (free.isEmpty()) {
      return parameter -> true;
    }
    List<String> known = new ArrayList<>();
    CookParameters.all().list().forEach(parameter -> known.add(parameter.id()));
    for (String name : free) {
      if (!known.contains(name)) {
        throw new BadInputException(
            "--free must name numbers of " + String.join(", ", known) + ", was " + name);
      }
    }
    return parameter -> free.contains(parameter.id().replaceFirst("[./].*", ""));
  }

  private Optional<Calibrated> calibrated(
      CookerSearch search, String id, List<PackageInput> inputs, List<Finding> said) {
    List<String> hashes = inputs.stream().map(PackageInput::hash).toList();
    List<LoggedCase> cases = new ArrayList<>();
    List<Source> sources = new ArrayList<>();
    for (PackageInput input : inputs) {
      Source source = new Source(input.log(), span(input), Optional.empty());
      sources.add(source);
      cases.add(LoggedCase.of(input.cook(), input.log(), source.span(), source.probe()));
    }
    try {
      CookerSearch.Found found = search.find(cases, starts, draws, seed);
      Simulator simulator = Simulator.with(accuracy.settings());
      Verdict verdict =
          Inquiry.of(found.logs(), sources, simulator)
              .with(search.habitConflict(cases), search.habitRatio(cases))
              .into(found.calibration(), found.estimate());
      boolean asStated = verdict.status() == Verdict.Status.AS_STATED;
      Prior belief = asStated ? found.belief() : verdict.pooled();
      List<Finding> findings = new ArrayList<>(Findings.of(verdict, belief, sources, simulator));
      Findings.unreliable(found.draws()).ifPresent(findings::add);
      findings.addAll(Findings.profiles(profiles(found)));
      findings.addAll(said);
      findings.addAll(Findings.foretold(later(found, belief, inputs, simulator)));
      String status = verdict.status().word();
      Findings.inherited(search.inherited(status)).ifPresent(findings::add);
      CookerProfile profile = search.profile(id, found, belief, hashes, status, true);
      return Optional.of(new Calibrated(found, Optional.of(verdict), findings, profile));
    } catch (Interruption.Stopped e) {
      return search
          .best()
          .map(
              found ->
                  new Calibrated(
                      found,
                      Optional.empty(),
                      said,
                      search.profile(
                          id + PARTIAL, found, found.belief(), hashes, "unchecked", false)));
    }
  }

  private List<LikelihoodProfile> profiles(CookerSearch.Found found) {
    List<LikelihoodProfile> all = new ArrayList<>();
    ParameterSet parameters = found.logs().parameters();
    for (int p = 0; profiles && p < parameters.size(); p++) {
      if (parameters.get(p).owner() == Owner.COOKER) {
        all.add(LikelihoodProfile.of(found.calibration(), found.estimate(), p));
      }
    }
    return all;
  }

  /** Readings that were left out since they came later than the first share of a log. */
  private List<LaterReadings> later(
      CookerSearch.Found found, Prior belief, List<PackageInput> inputs, Simulator simulator) {
    if (first.isEmpty()) {
      return List.of();
    }
    List<LoggedCase> whole =
        inputs.stream()
            .map(one -> LoggedCase.of(one.cook(), one.log(), used(), Optional.empty()))
            .toList();
    return LaterReadings.of(found, belief, freedom(), whole, simulator, new SplittableRandom(seed));
  }

  private LogSpan used() {
    return until.map(LogSpan::until).orElse(LogSpan.ALL);
  }

  private LogSpan span(PackageInput input) {
    CookLog readings = used().ended(input.log().readings());
    return first
        .map(share -> LogSpan.until(readings.start() + share * (readings.end() - readings.start())))
        .orElse(used());
  }

  private void finish(
      Calibrated calibrated, List<PackageInput> inputs, List<RunManifest.InputFile> others)
      throws IOException {
    List<RunManifest.InputFile> entries = new ArrayList<>(others);
    inputs.forEach(input -> entries.addAll(input.entries()));
    if (before.isPresent()) {
      entries.add(
          Inputs.file(
              "cooker",
              String.valueOf(before.get().getFileName()),
              Files.readAllBytes(before.get())));
    }
    RunManifest manifest = Manifests.of("calibrate", entries, accuracy.settings(), options());
    String text = CookerProfileJson.text(calibrated.profile(), Version.text());
    String id = calibrated.profile().id();
    Path target = out.resolveSibling(id + ".json");
    AtomicFile.write(target, text);
    AtomicFile.write(out.resolveSibling(id + ".manifest.json"), ManifestJson.text(manifest));
    AtomicFile.write(
        out.resolveSibling(id + ".html"), CalibrationReport.html(calibrated, manifest));
    PrintWriter screen = spec.commandLine().getOut();
    screen.print(json ? text : CalibrationText.of(calibrated));
    if (!json) {
      screen.println(
          "Wrote " + target + ", and beside it " + id + ".html, " + id + ".manifest.json");
    }
    if (!calibrated.profile().complete()) {
      notice(target);
    }
    screen.flush();
  }

  /** Says where what was found of a stopped search is, and where it is not. */
  private void notice(Path partial) {
    PrintWriter err = spec.commandLine().getErr();
    err.println(
        "roastfield: stopped before its end: what was found so far is in "
            + partial
            + ", unchecked; "
            + (Files.exists(out) ? out + " is as it was" : "no " + out + " was written"));
    err.flush();
  }

  private List<RunManifest.Setting> options() {
    List<RunManifest.Setting> options = new ArrayList<>();
    if (!free.isEmpty()) {
      options.add(new RunManifest.Setting("free", String.join(",", free)));
    }
    options.add(new RunManifest.Setting("starts", Integer.toString(starts)));
    options.add(new RunManifest.Setting("draws", Boolean.toString(draws)));
    options.add(new RunManifest.Setting("profiles", Boolean.toString(profiles)));
    options.add(new RunManifest.Setting("seed", Long.toString(seed)));
    first.ifPresent(share -> options.add(new RunManifest.Setting("first", Double.toString(share))));
    until.ifPresent(time -> options.add(new RunManifest.Setting("until_s", Double.toString(time))));
    return options;
  }
}
