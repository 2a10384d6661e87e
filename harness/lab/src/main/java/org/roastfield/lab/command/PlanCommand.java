package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.plan.PlanRequest;
import org.roastfield.core.plan.Planner;
import org.roastfield.lab.cooker.CookerProfileJson;
import org.roastfield.lab.cooker.VariedCook;
import org.roastfield.lab.files.CookerProfileFile;
import org.roastfield.lab.plan.CookerBelief;
import org.roastfield.lab.plan.PlanAsk;
import org.roastfield.lab.plan.PlanCalendar;
import org.roastfield.lab.plan.PlanMaker;
import org.roastfield.lab.plan.PlanSheet;
import org.roastfield.lab.plan.SharedFire;
import org.roastfield.lab.plan.UnplannableException;
import org.roastfield.lab.replay.Readout;
import org.roastfield.lab.report.PlanReport;
import org.roastfield.lab.result.PlanJson;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.result.RunManifest.Setting;
import org.roastfield.lab.timeline.TemperatureScale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Works a cook backwards from the table. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description =
        "Works a cook backwards from the table: when to do what, at which reading it comes off the"
            + " gentle heat, and the chances of that.")
final class PlanCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "COOK.yaml", description = "Cook file.")
  private Path cookPath = Path.of("");

  @Option(names = "--fahrenheit", description = "Words and pictures in °F instead of °C.")
  private boolean fahrenheit;

  @Option(
      names = "--probe",
      paramLabel = "NAME",
      description =
          "Probe of the cook file that decides when it comes off, or core for one in the middle"
              + " (default: the only one that is meant for the core or has errors stated).")
  private Optional<String> probe = Optional.empty();

  @Mixin private CookerOption cooker = new CookerOption();

  @Option(
      names = "--beside",
      paramLabel = "OTHER.yaml",
      description =
          "Cook file of another cut on the same cooker; may be given more than once. Each has the"
              + " service of its file, or that of --serve-at.")
  private List<Path> beside = new ArrayList<>();

  @Option(
      names = "--members",
      paramLabel = "N",
      description = "Cooks that are drawn, 20 to 100000 (default: ${DEFAULT-VALUE}).")
  private int members = PlanRequest.USUAL_MEMBERS;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Seed of the draws (default: ${DEFAULT-VALUE}).")
  private long seed = 1;

  @Option(
      names = "--exact",
      description =
          "What changes do by all draws, instead of by derivatives or a few; takes some times as"
              + " long.")
  private boolean exact;

  @Mixin private PlanArguments when = new PlanArguments();

  @Mixin private AnswerOptions answer = new AnswerOptions();

  private final Clock clock = Clock.system(ZoneId.systemDefault());

  PlanCommand() {}

  @Override
  public Integer call() throws IOException {
    if (members < 20 || members > 100_000) {
      throw new BadInputException("--members must be from 20 to 100000, was " + members);
    }
    List<CookInput> inputs = new ArrayList<>(List.of(CookInput.read(cookPath)));
    for (Path other : beside) {
      inputs.add(CookInput.read(other));
    }
    Optional<CookerProfileFile> profile = cooker.of(inputs.get(0).cook());
    Optional<ZoneId> zone = zone(inputs);
    List<PlanSheet> sheets = new ArrayList<>();
    for (CookInput input : inputs) {
      sheets.add(planned(input, profile, zone));
    }
    finish(inputs, profile, sheets);
    return 0;
  }

  /** The zone of all cuts, whose cooker stands in one place. */
  private Optional<ZoneId> zone(List<CookInput> inputs) {
    Map<ZoneId, String> stated = new LinkedHashMap<>();
    for (CookInput input : inputs) {
      Optional<ZoneId> zone = input.cook().notes().plan().zone();
      zone.ifPresent(one -> stated.putIfAbsent(one, one + " in " + input.cook().fileName()));
    }
    if (when.zone().isEmpty() && stated.size() > 1) {
      throw new BadInputException(
          "cuts on one fire must be in one time zone, was "
              + String.join(", ", stated.values())
              + ": say which by --zone");
    }
    return when.zone().or(() -> stated.keySet().stream().findFirst());
  }

  private PlanSheet planned(
      CookInput input, Optional<CookerProfileFile> profile, Optional<ZoneId> zone) {
    try {
      return sheet(input, profile, zone);
    } catch (UnplannableException e) {
      throw new BadInputException(
          input.cook().fileName() + " cannot be planned: " + e.getMessage());
    }
  }

  private PlanSheet sheet(
      CookInput input, Optional<CookerProfileFile> profile, Optional<ZoneId> zone) {
    Probe display = display(input);
    VariedCook cook = VariedCook.planned(input.cook(), display);
    CookerBelief belief =
        profile
            .map(known -> CookerBelief.of(CookerProfileJson.read(known), cook))
            .orElseGet(() -> CookerBelief.population(cook));
    TemperatureScale scale = fahrenheit ? TemperatureScale.FAHRENHEIT : TemperatureScale.CELSIUS;
    PlanAsk ask =
        new PlanAsk(
            when.service(input.cook(), zone),
            zone,
            zero -> when.now(zero, clock),
            display,
            members,
            seed,
            beside.isEmpty(),
            exact,
            scale);
    int workers = Runtime.getRuntime().availableProcessors();
    ExecutorService executor = Executors.newFixedThreadPool(workers);
    try {
      return PlanMaker.sheet(cook, belief, ask, executor, workers);
    } finally {
      executor.shutdown();
    }
  }

  private Probe display(CookInput input) {
    try {
      return Readout.of(input.cook(), probe).probe().orElse(Probe.CORE);
    } catch (IllegalArgumentException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
  }

  private void finish(
      List<CookInput> inputs, Optional<CookerProfileFile> profile, List<PlanSheet> sheets)
      throws IOException {
    List<RunManifest.InputFile> entries = new ArrayList<>();
    inputs.forEach(input -> entries.add(input.entry()));
    profile.ifPresent(known -> entries.add(CookerOption.entry(known)));
    RunManifest manifest = Manifests.of("plan", entries, Planner.PLANNING, settings());
    String name = inputs.get(0).cook().name();
    if (sheets.size() == 1) {
      PlanSheet sheet = sheets.get(0);
      Map<String, String> files = AnswerOptions.files("plan", PlanJson.text(sheet), manifest);
      files.put("plan.html", PlanReport.html(sheet, manifest));
      files.put("plan.ics", PlanCalendar.text(sheet, clock.instant()));
      answer.give(spec, name, PlanText.of(sheet), files);
      return;
    }
    SharedFire shared = shared(sheets);
    answer.give(spec, name, PlanText.of(shared), files(shared, manifest));
  }

  private static SharedFire shared(List<PlanSheet> sheets) {
    try {
      return new SharedFire(sheets);
    } catch (IllegalArgumentException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
  }

  private Map<String, String> files(SharedFire shared, RunManifest manifest) {
    Map<String, String> files = AnswerOptions.files("plan", PlanJson.text(shared), manifest);
    for (int i = 0; i < shared.sheets().size(); i++) {
      PlanSheet sheet = shared.sheets().get(i);
      if (i > 0) {
        files.put(PlanJson.file(i) + ".json", PlanJson.text(sheet));
      }
      Optional<SharedFire> together = i == 0 ? Optional.of(shared) : Optional.empty();
      files.put(PlanJson.file(i) + ".html", PlanReport.html(sheet, together, manifest));
    }
    files.put("plan.ics", PlanCalendar.text(shared, clock.instant()));
    return files;
  }

  private List<Setting> settings() {
    List<Setting> settings = new ArrayList<>(when.settings());
    probe.ifPresent(name -> settings.add(new Setting("probe", name)));
    settings.add(new Setting("members", Integer.toString(members)));
    settings.add(new Setting("seed", Long.toString(seed)));
    settings.add(new Setting("exact", Boolean.toString(exact)));
    return settings;
  }
}
