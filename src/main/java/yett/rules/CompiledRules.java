package yett.rules;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.SecureClassLoader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.jar.JarEntry;
import java.util.jar.JarInputStream;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/**
 * Classes of compiled rules, loaded from the very bytes that were compiled or looked at: no file
 * can be exchanged in between.
 */
final class CompiledRules extends SecureClassLoader {
  private static final String MODEL_LIST = "META-INF/kie/yett/rules/drools-model";
  private static final String CLASS = ".class";

  private final Map<String, byte[]> entries = new HashMap<>();

  private CompiledRules(byte[] archive) throws IOException {
    super(CompiledRules.class.getClassLoader());
    try (JarInputStream jar = new JarInputStream(new ByteArrayInputStream(archive))) {
      for (JarEntry entry = jar.getNextJarEntry(); entry != null; entry = jar.getNextJarEntry()) {
        entries.put(entry.getName(), jar.readAllBytes());
      }
    }
  }

  /**
   * @param archive as the compiler made it
   * @throws IOException if it holds no compiled rules
   */
  static KieBase load(byte[] archive) throws IOException, ReflectiveOperationException {
    CompiledRules loader = new CompiledRules(archive);
    byte[] names = loader.entries.get(MODEL_LIST);
    if (names == null) {
      throw new IOException("no compiled rules");
    }
    List<Model> models = new ArrayList<>();
    for (String name : new String(names, StandardCharsets.UTF_8).lines().skip(1).toList()) {
      models.add((Model) loader.loadClass(name.strip()).getConstructor().newInstance());
    }
    return KieBaseBuilder.createKieBaseFromModel(models);
  }

  @Override
  protected Class<?> findClass(String name) throws ClassNotFoundException {
    byte[] bytes = entries.get(name.replace('.', '/') + CLASS);
    if (bytes == null) {
      throw new ClassNotFoundException(name);
    }
    return defineClass(name, bytes, 0, bytes.length);
  }

  /** The session looks at the classes of conditions, to find those that are the same. */
  @Override
  public InputStream getResourceAsStream(String name) {
    byte[] bytes = entries.get(name);
    return bytes == null ? super.getResourceAsStream(name) : new ByteArrayInputStream(bytes);
  }
}
