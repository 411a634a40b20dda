package yett.command;

import jakarta.validation.ConstraintViolation;
import jakarta.validation.Validator;
import jakarta.validation.executable.ExecutableValidator;
import jakarta.validation.metadata.BeanDescriptor;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.util.Set;

/**
 * A validator that accepts everything. Spring Shell validates parameters before it calls a method.
 * Here the commands check them and say what to type instead, and the usual validator takes longer
 * to start than most commands take to run.
 */
final class NoConstraints implements Validator, ExecutableValidator {
  @Override
  public ExecutableValidator forExecutables() {
    return this;
  }

  @Override
  public <T> Set<ConstraintViolation<T>> validate(T object, Class<?>... groups) {
    return Set.of();
  }

  @Override
  public <T> Set<ConstraintViolation<T>> validateProperty(
      T object, String property, Class<?>... groups) {
    return Set.of();
  }

  @Override
  public <T> Set<ConstraintViolation<T>> validateValue(
      Class<T> type, String property, Object value, Class<?>... groups) {
    return Set.of();
  }

  @Override
  public <T> Set<ConstraintViolation<T>> validateParameters(
      T object, Method method, Object[] values, Class<?>... groups) {
    return Set.of();
  }

  @Override
  public <T> Set<ConstraintViolation<T>> validateReturnValue(
      T object, Method method, Object value, Class<?>... groups) {
    return Set.of();
  }

  @Override
  public <T> Set<ConstraintViolation<T>> validateConstructorParameters(
      Constructor<? extends T> constructor, Object[] values, Class<?>... groups) {
    return Set.of();
  }

  @Override
  public <T> Set<ConstraintViolation<T>> validateConstructorReturnValue(
      Constructor<? extends T> constructor, T value, Class<?>... groups) {
    return Set.of();
  }

  @Override
  public BeanDescriptor getConstraintsForClass(Class<?> type) {
    throw new UnsupportedOperationException("nothing here has constraints");
  }

  @Override
  public <T> T unwrap(Class<T> type) {
    throw new UnsupportedOperationException("there is nothing inside");
  }
}
