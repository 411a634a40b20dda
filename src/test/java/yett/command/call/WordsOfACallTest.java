package yett.command.call;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Times and people, as they are said on the telephone. */
class WordsOfACallTest {
  /** A Tuesday, 20:30 on the wall. */
  private static final Instant NOW = Instant.parse("2026-11-24T19:30:20Z");

  private static final ZoneId HERE = ZoneId.of("Europe/Paris");

  @ParameterizedTest
  @CsvSource({
    "'Tom, 21:15', 2026-11-24T20:15:00Z",
    "'Tom by 14:30', 2026-11-25T13:30:00Z",
    "in 40 min, 2026-11-24T20:10:00Z",
    "Ann in 2 hours, 2026-11-24T21:30:00Z",
    "tomorrow, 2026-11-25T07:00:00Z",
    "tomorrow 9.15, 2026-11-25T08:15:00Z",
    "Tuesday 7:30, 2026-12-01T06:30:00Z",
    "2026-12-03, 2026-12-03T07:00:00Z",
    "tomorow at 9, 2026-11-25T08:00:00Z",
    "Tom tommorrow 9, 2026-11-25T08:00:00Z",
    "tomorrow at 2, 2026-11-25T13:00:00Z",
    "tomorrow morning, 2026-11-25T11:00:00Z",
    "tomorrow afternoon, 2026-11-25T16:00:00Z",
    "tomorrow evening at 7, 2026-11-25T18:00:00Z",
    "tonight, 2026-11-24T21:00:00Z",
    "in an hour, 2026-11-24T20:30:00Z",
    "Tom within the hour, 2026-11-24T20:30:00Z",
    "Ann in half an hour, 2026-11-24T20:00:00Z",
    "in a couple of hours, 2026-11-24T21:30:00Z",
    "in two hours, 2026-11-24T21:30:00Z",
    "'Tom, 20 min', 2026-11-24T19:50:00Z",
    "at 9, 2026-11-24T20:00:00Z",
    "by 8, 2026-11-25T07:00:00Z",
    "9 am, 2026-11-25T08:00:00Z",
    "9 a.m., 2026-11-25T08:00:00Z",
    "2:30 pm tomorrow, 2026-11-25T13:30:00Z",
    "half past nine tomorrow, 2026-11-25T08:30:00Z",
    "ten o'clock, 2026-11-24T21:00:00Z",
    "wensday at 10, 2026-11-25T09:00:00Z",
    "Thu 8, 2026-11-26T07:00:00Z",
    "this afternoon, 2026-11-25T16:00:00Z",
    "noon, 2026-11-25T11:00:00Z",
    "'Pia, now', 2026-11-24T19:30:00Z",
    "Pia straight away, 2026-11-24T19:30:00Z",
    "'Pia, now, in 20 min', 2026-11-24T19:50:00Z"
  })
  void a_time_is_found_in_passing(String words, Instant due) {
    assertThat(Due.in(words, NOW, HERE)).contains(due);
  }

  /** Said at ten past two in the afternoon. */
  @ParameterizedTest
  @CsvSource({
    "'Tom, half past five', 2026-11-24T16:30:00Z, true",
    "'Tom, half five', 2026-11-24T16:30:00Z, true",
    "quarter past six, 2026-11-24T17:15:00Z, true",
    "a quarter to six, 2026-11-24T16:45:00Z, true",
    "ten to one, 2026-11-25T11:50:00Z, false",
    "twenty-five past three, 2026-11-24T14:25:00Z, true",
    "at five, 2026-11-24T16:00:00Z, true",
    "5:30, 2026-11-24T16:30:00Z, true",
    "05:30, 2026-11-25T04:30:00Z, false",
    "half past five in the morning, 2026-11-25T04:30:00Z, false",
    "tomorrow at half past five, 2026-11-25T16:30:00Z, true",
    "half past one, 2026-11-25T12:30:00Z, true",
    "half past eight tonight, 2026-11-24T19:30:00Z, false",
    "7 in the evening, 2026-11-24T18:00:00Z, false",
    "at eleven, 2026-11-25T10:00:00Z, true",
    "half past two, 2026-11-24T13:30:00Z, true",
    "17:30, 2026-11-24T16:30:00Z, false"
  })
  void a_time_of_day_is_the_next_at_which_somebody_works(
      String words, Instant due, boolean chosen) {
    Instant afternoon = Instant.parse("2026-11-24T13:10:00Z");
    assertThat(Due.when(words, afternoon, HERE)).contains(new Due.When(due, chosen));
  }

  /** In the small hours, two o'clock is soon. */
  @Test
  void somebody_may_come_by_night_if_it_is_night() {
    assertThat(Due.in("half past two", Instant.parse("2026-11-24T23:40:00Z"), HERE))
        .contains(Instant.parse("2026-11-25T01:30:00Z"));
  }

  @ParameterizedTest
  @CsvSource({
    "Tom",
    "as soon as can be",
    "2026-02-31",
    "van 12",
    "25:70",
    "Tom 2",
    "two of them",
    "not now",
    "Monk, Tuesdale"
  })
  void no_time_is_none(String words) {
    assertThat(Due.in(words, NOW, HERE)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "'Ina Teal, 4 Quay Road, 555 0107', Ina Teal, 555 0107, 4 Quay Road",
    "'my name is Ina Teal, +44 20 7946 0018', Ina Teal, +44 20 7946 0018, ''",
    "'555 0107', '', 555 0107, ''",
    "'Ina Teal', Ina Teal, '', ''",
    "'Ina Teal; from the fish dock; (020) 7946-0018', Ina Teal, (020) 7946-0018, the fish dock",
    "'12 Harbour Road, 0207946001', '', 0207946001, 12 Harbour Road",
    "'its Joan from the bakery, 555 0134', Joan, 555 0134, the bakery",
    "'It''s Joan from the bakery 555 0134', Joan, 555 0134, the bakery",
    "'hello, this is Joan Reed here, my number is 555 0134', Joan Reed, 555 0134, ''",
    "'Joan speaking, I''m at the bakery, call me on 555 0134', Joan, 555 0134, the bakery",
    "'im Joan, at 4 Quay Road, tel 5550134', Joan, 5550134, 4 Quay Road",
    "'Joan Reed at 4 Quay Road', Joan Reed, '', 4 Quay Road",
    "'from the bakery, 555 0134', '', 555 0134, the bakery",
    "'Ian Mason, Itself House, 555 0134', Ian Mason, 555 0134, Itself House",
    "'dunno its Ron', Ron, '', ''",
    "'Tilly again', Tilly, '', ''",
    "'Ron, double five five 0141', Ron, 5550141, ''",
    "'Ron, ropewalk 3, oh seven seven double zero 900222', Ron, 07700900222, ropewalk 3",
    "'Ron, number four, four two four', Ron, '', 'number four, four two four'",
    "'Wellington Hill', Wellington Hill, '', ''"
  })
  void who_calls_is_read_from_one_line(String line, String name, String phone, String where) {
    assertThat(CallerDetails.of(line)).isEqualTo(new CallerDetails(name, phone, where));
  }

  @Test
  void nothing_told_is_nothing_kept() {
    assertThat(CallerDetails.of("  ")).isEqualTo(new CallerDetails("", "", ""));
  }
}
