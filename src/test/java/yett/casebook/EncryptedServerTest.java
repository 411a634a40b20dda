package yett.casebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Properties;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import yett.testing.PostgresServer;

/** What leaves this computer is encrypted. */
class EncryptedServerTest {
  private static final PostgresServer ENCRYPTED = PostgresServer.encrypted();

  @AfterAll
  static void end() {
    ENCRYPTED.close();
  }

  /** The loopback interface by a name that does not look like it. */
  private static String beyond(String url) {
    return url.replace("//127.0.0.1:", "//127.1:");
  }

  private static boolean isEncrypted(String url) throws SQLException {
    try (var connection = DriverManager.getConnection(url);
        var statement = connection.createStatement();
        var row =
            statement.executeQuery(
                "select bool_and(ssl) from pg_stat_ssl join pg_stat_activity using (pid)"
                    + " where application_name = 'Yett'")) {
      row.next();
      return row.getBoolean(1);
    }
  }

  @Test
  void a_line_that_leaves_this_computer_is_encrypted_without_a_word() throws SQLException {
    String url = ENCRYPTED.newCasebook();
    try (var casebook = Casebook.open(beyond(url))) {
      assertThat(casebook.cases()).isEmpty();
      assertThat(isEncrypted(url)).isTrue();
    }
  }

  @Test
  void a_server_that_offers_none_is_told_with_the_reason_and_what_to_do() {
    String url = beyond(PostgresServer.shared().newCasebook());

    assertThatThrownBy(() -> Casebook.open(url))
        .isInstanceOf(CasebookUnreachable.class)
        .hasMessageContaining("an encrypted connection (TLS) to the server cannot be made (")
        .hasMessageContaining("SSL")
        .hasMessageContaining("sslmode=disable");

    Casebook.open(url + "&sslmode=disable").close();
  }

  @Test
  void a_certificate_that_nobody_vouches_for_is_told() {
    assertThatThrownBy(
            () -> Casebook.open(beyond(ENCRYPTED.newCasebook()) + "&sslmode=verify-full"))
        .isInstanceOf(CasebookUnreachable.class)
        .hasMessageContaining("an encrypted connection (TLS) to the server cannot be made (")
        .hasMessageNotContaining(PostgresServer.PASSWORD);
  }

  @Test
  void a_certificate_for_another_computer_is_told() {
    assertThatThrownBy(
            () ->
                Casebook.open(
                    beyond(ENCRYPTED.newCasebook())
                        + "&sslmode=verify-full&sslrootcert="
                        + ENCRYPTED.certificate()))
        .isInstanceOf(CasebookUnreachable.class)
        .hasMessageContaining("the server's certificate is for a computer of another name");
  }

  @Test
  void a_certificate_that_the_given_one_does_not_vouch_for_is_told() {
    assertThat(
            ServerTroubles.explained(
                new Address("jdbc:postgresql://quay.example/yett"),
                new SQLException("SSL error: PKIX path validation failed: x.y.Z", "08006")))
        .hasMessageContaining("is not one that sslrootcert vouches for")
        .hasMessageNotContaining("PKIX");
  }

  @ParameterizedTest
  @ValueSource(strings = {"prefer", "allow"})
  void to_leave_it_to_the_server_is_neither_yes_nor_no(String mode) {
    assertThatThrownBy(() -> Casebook.open("jdbc:postgresql://quay.example/yett?sslmode=" + mode))
        .isInstanceOf(CasebookException.class)
        .hasMessageStartingWith(
            "jdbc:postgresql://quay.example/yett: with sslmode="
                + mode
                + " the connection may be unencrypted");
  }

  @ParameterizedTest
  @CsvSource({
    "//quay.example/yett, require",
    "//127.0.0.1.quay.example/yett, require",
    "'//127.0.0.1,quay.example/yett', require",
    "//192.168.20.7/yett?ssl=false, require",
    "//quay.example/yett?ssl=true, ''",
    "//quay.example/yett?sslmode=verify-full, ''",
    "//quay.example/yett?sslmode=disable, ''",
    "//localhost/yett, ''",
    "//127.0.0.1:5433/yett, ''",
    "//[::1]/yett, ''",
    "yett, ''",
  })
  void it_is_asked_for_where_nobody_decided(String address, String mode) {
    var settings = new Properties();

    yett.casebook.PostgresServer.encrypt(new Address("jdbc:postgresql:" + address), settings);

    assertThat(settings.getProperty("sslmode", "")).isEqualTo(mode);
  }
}
