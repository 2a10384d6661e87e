package org.roastfield.lab.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.roastfield.core.simulation.Settings;
import org.roastfield.lab.result.AtomicFile;
import org.roastfield.lab.result.Inputs;
import org.roastfield.lab.result.ManifestJson;
import org.roastfield.lab.result.RunManifest.InputFile;
import org.roastfield.lab.synthetic.MadeCook;
import org.roastfield.lab.synthetic.RecipeFile;
import org.roastfield.lab.synthetic.SyntheticCook;
import org.roastfield.lab.synthetic.SyntheticData;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the made-up cooks again. */
@Command(
    name = "make-data",
    mixinStandardHelpOptions = true,
    description = {
      "Makes made-up cooks from a list of recipes: a log package of each, and the truth apart.",
      "Where checksums.sha256 stands beside the list, what is made is compared with it."
    })
final class MakeDataCommand implements Callable<Integer> {

  private static final String SUMS = "checksums.sha256";

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "COOKS.csv", description = "List of recipes.")
  private Path list = Path.of("");

  @Option(
      names = "--out",
      paramLabel = "FOLDER",
      required = true,
      description = "Folder to write into; cooks that are there already are not replaced.")
  private Path out = Path.of("");

  @Option(
      names = "--only",
      paramLabel = "ID",
      description = "Make this cook only; may be given several times.")
  private List<String> only = new ArrayList<>();

  @Option(
      names = "--new-sums",
      description = "Write checksums.sha256 beside the list instead of comparing with it.")
  private boolean newSums;

  MakeDataCommand() {}

  @Override
  public Integer call() throws IOException {
    byte[] bytes = Files.readAllBytes(list);
    String name = String.valueOf(list.getFileName());
    List<SyntheticCook> recipes = chosen(RecipeFile.parse(name, SyntheticData.recipes(bytes)));
    PrintWriter screen = spec.commandLine().getOut();
    Map<String, String> sums = new TreeMap<>();
    for (SyntheticCook recipe : recipes) {
      SyntheticCook.Made made = recipe.make();
      if (made instanceof SyntheticCook.Failed failed) {
        spec.commandLine()
            .getErr()
            .println("roastfield: " + recipe.id() + ": " + failed.failed().message());
        return 1;
      }
      SyntheticData.write((MadeCook) made, out);
      sums.putAll(SyntheticData.checksums(recipe.id(), out));
    }
    writeManifest(Inputs.file("recipes", name, bytes));
    screen.println("Wrote " + recipes.size() + " cooks to " + out + ", made up");
    int code = newSums ? writeSums(sums, screen) : compare(sums, screen);
    screen.flush();
    return code;
  }

  private List<SyntheticCook> chosen(List<SyntheticCook> recipes) {
    for (String id : only) {
      if (recipes.stream().noneMatch(recipe -> recipe.id().equals(id))) {
        throw new BadInputException("no recipe in " + list.getFileName() + " has the id " + id);
      }
    }
    if (newSums && !only.isEmpty()) {
      throw new BadInputException("--new-sums needs all of the cooks, so it cannot be with --only");
    }
    return only.isEmpty()
        ? recipes
        : recipes.stream().filter(recipe -> only.contains(recipe.id())).toList();
  }

  private void writeManifest(InputFile recipes) throws IOException {
    AtomicFile.write(
        out.resolve("manifest.json"),
        ManifestJson.text(
            Manifests.of("make-data", List.of(recipes), Settings.withDefaults(), List.of())));
  }

  private int writeSums(Map<String, String> sums, PrintWriter screen) throws IOException {
    AtomicFile.write(list.resolveSibling(SUMS), SyntheticData.text(sums));
    screen.println("Wrote " + sums.size() + " sums to " + list.resolveSibling(SUMS));
    return 0;
  }

  private int compare(Map<String, String> sums, PrintWriter screen) throws IOException {
    Path file = list.resolveSibling(SUMS);
    if (!Files.exists(file)) {
      screen.println("No " + SUMS + " beside " + list + " to compare with");
      return 0;
    }
    Map<String, String> expected =
        SyntheticData.parse(Files.readString(file, StandardCharsets.UTF_8));
    List<String> different = new ArrayList<>();
    sums.forEach(
        (path, sum) -> {
          if (!sum.equals(expected.get(path))) {
            different.add(path);
          }
        });
    if (different.isEmpty()) {
      screen.println("All " + sums.size() + " files are those of " + SUMS);
      return 0;
    }
    PrintWriter err = spec.commandLine().getErr();
    err.println("roastfield: not those of " + SUMS + ": " + String.join(", ", different));
    return 1;
  }
}
