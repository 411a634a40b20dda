package yett.command.knowledge;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import yett.command.common.UsageException;
import yett.knowledge.AddOn;
import yett.knowledge.RuleBase;

/** Names a packed rule base, so that the receiver can say which edition it is. */
final class PackedEdition {
  private PackedEdition() {}

  /** Name and version of the rule base or add-on in the folder itself. */
  static String of(Path folder, RuleBase base) {
    boolean isAddOn = Files.exists(folder.resolve(AddOn.FILE));
    String place = folder.toString().replace('\\', '/') + "/";
    Optional<AddOn> addOn =
        base.addOns().stream().filter(a -> isAddOn && a.folder().equals(place)).findFirst();
    String name = addOn.map(AddOn::name).orElse(base.edition().name());
    String version = addOn.map(AddOn::version).orElse(base.edition().version());
    if (version.isEmpty()) {
      throw new UsageException(
          folder
              + " has no version, and whoever gets it could not say which one it is. Write a line"
              + " such as version: \"1.0\" "
              + (isAddOn
                  ? "in " + folder.resolve(AddOn.FILE) + "."
                  : "on a card \"rule-base: ID\" in " + folder.resolve("rule-base.yaml") + "."));
    }
    return name + " " + version;
  }
}
