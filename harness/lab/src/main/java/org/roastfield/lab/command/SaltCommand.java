package org.roastfield.lab.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.roastfield.lab.files.PlanWishes;
import org.roastfield.lab.report.SaltReport;
import org.roastfield.lab.result.RunManifest;
import org.roastfield.lab.result.RunManifest.Setting;
import org.roastfield.lab.result.SaltJson;
import org.roastfield.lab.salting.SaltPlan;
import org.roastfield.lab.salting.SaltWish;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says how early to salt a cut, and where the salt is by then. */
@Command(
    name = "salt",
    mixinStandardHelpOptions = true,
    description = "Says how early to salt the cut of a cook file, and how deep the salt gets.")
final class SaltCommand implements Callable<Integer> {

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "COOK.yaml", description = "Cook file.")
  private Path cookPath = Path.of("");

  @Option(
      names = "--share",
      paramLabel = "SHARE",
      converter = QuantityConverters.Share.class,
      description = "Salt for the raw meat (default: the cook file's, or 1.2 %%).")
  private Optional<Double> share = Optional.empty();

  @Option(
      names = "--depth",
      paramLabel = "LENGTH",
      converter = QuantityConverters.Length.class,
      description =
          "Depth at which to judge it (default: the cook file's, or 10 mm, or the middle of a thin"
              + " cut).")
  private Optional<Double> depth = Optional.empty();

  @Option(
      names = "--evenness",
      paramLabel = "SHARE",
      defaultValue = "50 %",
      converter = QuantityConverters.Share.class,
      description = "Salt at that depth over salt in the face (default: ${DEFAULT-VALUE}).")
  private double evenness;

  @Option(names = "--thawed", description = "The meat was frozen before.")
  private boolean thawed;

  @Mixin private AnswerOptions answer = new AnswerOptions();

  SaltCommand() {}

  @Override
  public Integer call() throws IOException {
    CookInput input = CookInput.read(cookPath);
    SaltPlan plan = plan(input);
    RunManifest manifest =
        Manifests.of("salt", List.of(input.entry()), plan.salting().settings(), settings(plan));
    Map<String, String> files = AnswerOptions.files("salt", SaltJson.text(plan), manifest);
    files.put("salt.html", SaltReport.html(plan, manifest));
    answer.give(spec, input.cook().name(), SaltText.of(plan), files);
    return 0;
  }

  private SaltPlan plan(CookInput input) {
    Optional<PlanWishes.Salt> stated = input.cook().notes().plan().salt();
    OptionalDouble below =
        depth
            .map(OptionalDouble::of)
            .orElseGet(() -> stated.map(PlanWishes.Salt::depth).orElseGet(OptionalDouble::empty));
    double much =
        share.orElseGet(() -> stated.map(PlanWishes.Salt::share).orElse(SaltWish.USUAL_SHARE));
    try {
      return SaltPlan.of(input.cook(), new SaltWish(much, below, evenness, thawed));
    } catch (IllegalArgumentException e) {
      throw new BadInputException(String.valueOf(e.getMessage()));
    }
  }

  private static List<Setting> settings(SaltPlan plan) {
    return List.of(
        new Setting("salt_share", Double.toString(plan.wish().share())),
        new Setting("depth_m", Double.toString(plan.depth())),
        new Setting("evenness", Double.toString(plan.wish().evenness())),
        new Setting("thawed", Boolean.toString(plan.wish().thawed())));
  }
}
