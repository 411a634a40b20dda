package yett.shell;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.SortedMap;
import java.util.TreeMap;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import yett.knowledge.KnowledgeSource;

/** The rule base that comes in the program's own archive. */
final class ShippedKnowledge implements KnowledgeSource {
  private static final String FOLDER = "/knowledge/";

  @Override
  public SortedMap<String, String> files() {
    SortedMap<String, String> files = new TreeMap<>();
    try {
      Resource[] resources =
          new PathMatchingResourcePatternResolver().getResources("classpath:knowledge/**/*.*");
      for (Resource resource : resources) {
        String url = resource.getURL().toString();
        String name = url.substring(url.lastIndexOf(FOLDER) + FOLDER.length());
        if (KnowledgeSource.wanted(name)) {
          files.put(name, resource.getContentAsString(KnowledgeSource.charset(name)));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the rule base of the program", e);
    }
    return files;
  }
}
