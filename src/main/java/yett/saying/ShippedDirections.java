package yett.saying;

import java.io.IOException;
import java.nio.file.Path;
import yett.knowledge.KnowledgeSource;
import yett.knowledge.RuleBase;
import yett.meaning.NoModelException;
import yett.meaning.SentenceDirections;

/**
 * Works out the meaning vectors of the sentences on the program's cards, when the program is built.
 */
public final class ShippedDirections {
  private ShippedDirections() {}

  /**
   * @param arguments the folder with the rule base, the folder with the program's classes
   */
  public static void main(String[] arguments) throws IOException, NoModelException {
    RuleBase base = RuleBase.read(KnowledgeSource.folder(Path.of(arguments[0])));
    SentenceDirections.write(Sayable.sentences(base), Path.of(arguments[1]));
  }
}
