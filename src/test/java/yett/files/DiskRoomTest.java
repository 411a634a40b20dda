package yett.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiskRoomTest {
  @TempDir Path directory;

  @Test
  void what_can_be_done_without_leaves_room_for_answers() throws IOException {
    long usable = Files.getFileStore(directory).getUsableSpace();
    Path place = directory.resolve("not").resolve("there");
    assertThat(DiskRoom.besidesAnswers(place, 2 * usable)).isFalse();
    assertThat(DiskRoom.besidesAnswers(place, usable - DiskRoom.FOR_ANSWERS / 2)).isFalse();
    assertThat(DiskRoom.besidesAnswers(place, usable / 2 - DiskRoom.FOR_ANSWERS)).isTrue();
  }
}
