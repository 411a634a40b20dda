package yett.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoomTest {
  @TempDir Path directory;

  @Test
  void what_can_be_done_without_leaves_room_for_answers() throws IOException {
    long usable = Files.getFileStore(directory).getUsableSpace();
    Path place = directory.resolve("not").resolve("there");
    assertThat(Room.besidesAnswers(place, 2 * usable)).isFalse();
    assertThat(Room.besidesAnswers(place, usable - Room.FOR_ANSWERS / 2)).isFalse();
    assertThat(Room.besidesAnswers(place, usable / 2 - Room.FOR_ANSWERS)).isTrue();
  }
}
