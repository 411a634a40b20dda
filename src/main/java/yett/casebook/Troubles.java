package yett.casebook;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.sql.SQLException;
import java.util.Optional;
import org.flywaydb.core.api.CoreErrorCode;
import org.flywaydb.core.api.FlywayException;
import org.sqlite.NativeLibraryNotFoundException;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Explains the errors of a database in plain words. */
final class Troubles {
  private static final String ELSEWHERE = " Choose another directory by setting YETT_HOME.";
  private static final String NOT_WRITABLE =
      "you may not write here. Ask for the right to, or choose another directory by setting"
          + " YETT_HOME.";

  private Troubles() {}

  static CasebookException explained(Address address, Throwable trouble) {
    return address.isServer()
        ? ServerTroubles.explained(address, trouble)
        : new CasebookException(
            address.without(address.shown() + ": " + words(trouble)), address.cause(trouble));
  }

  static CasebookException explained(String where, Throwable trouble) {
    return new CasebookException(where + ": " + words(trouble), trouble);
  }

  /** The error for a column whose content this program cannot have written. */
  static CasebookException unreadable(String where, RuntimeException trouble) {
    return new CasebookException(
        where
            + ": something in the casebook was changed by another program, and cannot be read ("
            + told(trouble)
            + "). Put it right, or put the last back-up in its place.",
        trouble);
  }

  private static String words(Throwable trouble) {
    return find(trouble, SQLiteException.class)
        .map(Troubles::words)
        .orElseGet(() -> otherWords(trouble));
  }

  private static String otherWords(Throwable trouble) {
    if (find(trouble, AccessDeniedException.class).isPresent()) {
      return NOT_WRITABLE;
    }
    if (find(trouble, FileAlreadyExistsException.class).isPresent()) {
      return "the casebook's directory cannot be made, because a file has that name." + ELSEWHERE;
    }
    if (trouble instanceof LinkageError
        || find(trouble, NativeLibraryNotFoundException.class).isPresent()) {
      return "the database library cannot be loaded. It is unpacked to the temporary directory:"
          + " see that it can be written to and may hold programs, or set another with"
          + " -Dorg.sqlite.tmpdir=DIRECTORY.";
    }
    if (find(trouble, IOException.class).isPresent()) {
      return "the casebook's directory cannot be used (" + told(trouble) + ")." + ELSEWHERE;
    }
    if (trouble instanceof SQLException unknown && "08001".equals(unknown.getSQLState())) {
      return "this is not the address of a casebook. Write it as jdbc:postgresql://HOST/DATABASE or"
          + " jdbc:sqlite:FILE.";
    }
    return find(trouble, FlywayException.class)
        .map(Troubles::words)
        .orElseGet(() -> refused(trouble));
  }

  private static String words(FlywayException trouble) {
    return trouble.getErrorCode() == CoreErrorCode.NON_EMPTY_SCHEMA_WITHOUT_SCHEMA_HISTORY_TABLE
        ? "this is another program's database. It was not touched. Name another file."
        : "the casebook's tables cannot be laid out ("
            + told(trouble)
            + "). Keep a copy, then put the last back-up in its place.";
  }

  private static String refused(Throwable trouble) {
    return "the database refused ("
        + told(trouble)
        + "). Open the case again and look whether the last entry is there.";
  }

  private static String words(SQLiteException trouble) {
    // The shared memory of readers and writers is a file as well, and cannot grow on a full disk.
    SQLiteErrorCode kind =
        trouble.getResultCode() == SQLiteErrorCode.SQLITE_IOERR_SHMSIZE
            ? SQLiteErrorCode.SQLITE_FULL
            : primary(trouble.getResultCode());
    return switch (kind) {
      case SQLITE_NOTADB ->
          "this file is not a casebook. It was not touched. Put a back-up in its place, or move it"
              + " away and a new casebook begins.";
      case SQLITE_CORRUPT ->
          "the casebook is damaged. Keep a copy of the file, then put the last back-up in its"
              + " place.";
      case SQLITE_FULL ->
          "the disk is full. The last entry was not written; all before it is safe. Free some"
              + " space and enter it again.";
      case SQLITE_BUSY, SQLITE_LOCKED ->
          "another program keeps the casebook to itself. The last entry was not written. End the"
              + " other program, or wait, and enter it again.";
      case SQLITE_READONLY, SQLITE_PERM, SQLITE_AUTH -> NOT_WRITABLE;
      case SQLITE_CANTOPEN ->
          "the casebook cannot be opened or made here. See that the directory exists and that you"
              + " may write in it, or choose another by setting YETT_HOME.";
      case SQLITE_IOERR ->
          "the disk did not answer as it should ("
              + trouble.getResultCode()
              + "). See that it is still connected, then open the case again and look whether the"
              + " last entry is there.";
      default -> refused(trouble);
    };
  }

  /** The kind of an SQLite error, which is the low byte of its code; the detail is above it. */
  private static SQLiteErrorCode primary(SQLiteErrorCode code) {
    return SQLiteErrorCode.getErrorCode(code.code & 0xff);
  }

  static String told(Throwable trouble) {
    Throwable teller = find(trouble, SQLException.class).<Throwable>map(e -> e).orElse(trouble);
    return Optional.ofNullable(teller.getMessage())
        .flatMap(message -> message.strip().lines().findFirst())
        .orElse(teller.getClass().getSimpleName());
  }

  static <T> Optional<T> find(Throwable trouble, Class<T> kind) {
    for (Throwable t = trouble; t != null; t = t.getCause()) {
      if (kind.isInstance(t)) {
        return Optional.of(kind.cast(t));
      }
    }
    return Optional.empty();
  }
}
