package yett.rules;

import java.util.List;
import java.util.SortedMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import yett.knowledge.Problem;

/** Compiles rules (DRL). */
final class RuleCompiler {
  private static final String SOURCES = "src/main/resources/";
  private static final Pattern PACKAGE = Pattern.compile("(?m)^package\\s+([\\w.]+)");

  private RuleCompiler() {}

  /**
   * @param sources texts by path
   * @return an archive of classes
   * @throws RuleErrors with every error, each with its position if the compiler gives it
   */
  static byte[] compile(SortedMap<String, String> sources) {
    KieServices services = KieServices.get();
    ReleaseId release = services.newReleaseId("yett", "rules", "1");
    KieFileSystem files = services.newKieFileSystem();
    files.generateAndWritePomXML(release);
    sources.forEach(
        (name, text) -> files.write((SOURCES + folder(text) + name).replace("//", "/"), text));
    KieBuilder builder =
        services
            .newKieBuilder(files, RuleCompiler.class.getClassLoader())
            .buildAll(ExecutableModelProject.class);
    List<Problem> errors =
        CompilerWords.of(builder.getResults().getMessages(Message.Level.ERROR), sources);
    if (!errors.isEmpty()) {
      throw new RuleErrors(errors);
    }
    return ((InternalKieModule) builder.getKieModule()).getBytes();
  }

  /** The package that a file of rules declares; empty if none. */
  static String packageOf(String rules) {
    Matcher matcher = PACKAGE.matcher(rules);
    return matcher.find() ? matcher.group(1) : "";
  }

  /** The folder of a file's package, where the compiler expects the file. */
  private static String folder(String rules) {
    String name = packageOf(rules);
    return name.isEmpty() ? "" : name.replace('.', '/') + "/";
  }
}
