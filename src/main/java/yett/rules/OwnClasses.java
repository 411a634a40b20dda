package yett.rules;

import java.net.URL;
import java.net.URLClassLoader;

/**
 * Loads compiled rules from their file before it asks the program: the program's own rules lie
 * among its classes, and rules of a changed copy have the same names.
 */
final class OwnClasses extends URLClassLoader {
  OwnClasses(URL file) {
    super(new URL[] {file}, OwnClasses.class.getClassLoader());
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    synchronized (getClassLoadingLock(name)) {
      if (findLoadedClass(name) == null
          && findResource(name.replace('.', '/') + ".class") != null) {
        return findClass(name);
      }
      return super.loadClass(name, resolve);
    }
  }

  @Override
  public URL getResource(String name) {
    URL own = findResource(name);
    return own == null ? super.getResource(name) : own;
  }
}
