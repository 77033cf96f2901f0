package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileSetTest {
  @TempDir Path folder;

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void all_files_are_there_and_nothing_else() throws IOException {
    var set = new FileSet();
    set.put(folder.resolve("a.txt"), bytes("a"));
    set.put(folder.resolve("b.txt"), bytes("b"));
    set.write();
    assertThat(folder.toFile().list()).containsExactlyInAnyOrder("a.txt", "b.txt");
  }

  @Test
  void old_files_are_replaced() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "old");
    var set = new FileSet();
    set.put(folder.resolve("a.txt"), bytes("new"));
    set.write();
    assertThat(folder.resolve("a.txt")).hasContent("new");
    assertThat(folder.toFile().list()).containsExactly("a.txt");
  }

  @Test
  void if_one_cannot_be_written_none_is_and_the_old_ones_stay() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "old");
    Files.writeString(folder.resolve("in.xlsx"), "input");
    Files.createDirectories(folder.resolve("b.txt").resolve("in the way"));
    var set = new FileSet();
    set.setAside(folder.resolve("in.xlsx"), folder.resolve("in 2027-03-01.xlsx"));
    set.put(folder.resolve("a.txt"), bytes("new"));
    set.put(folder.resolve("c.txt"), bytes("new"));
    set.put(folder.resolve("b.txt"), bytes("never: a folder has its name"));
    assertThatThrownBy(set::write).isInstanceOf(IOException.class);
    assertThat(folder.resolve("a.txt")).hasContent("old");
    assertThat(folder.resolve("in.xlsx")).hasContent("input");
    assertThat(folder.toFile().list()).containsExactlyInAnyOrder("a.txt", "b.txt", "in.xlsx");
  }

  @Test
  void a_name_that_is_taken_is_not_overwritten_by_setting_aside() throws IOException {
    Files.writeString(folder.resolve("in.xlsx"), "input");
    Files.writeString(folder.resolve("kept.xlsx"), "somebody's");
    var set = new FileSet();
    set.setAside(folder.resolve("in.xlsx"), folder.resolve("kept.xlsx"));
    set.put(folder.resolve("in.xlsx"), bytes("new"));
    assertThatThrownBy(set::write).isInstanceOf(IOException.class);
    assertThat(folder.resolve("kept.xlsx")).hasContent("somebody's");
    assertThat(folder.resolve("in.xlsx")).hasContent("input");
  }

  @Test
  void the_input_is_set_aside_under_its_new_name() throws IOException {
    Files.writeString(folder.resolve("house-plan.xlsx"), "input");
    var set = new FileSet();
    set.setAside(folder.resolve("house-plan.xlsx"), folder.resolve("house-plan 2027-03-01.xlsx"));
    set.put(folder.resolve("house-plan.xlsx"), bytes("result"));
    set.write();
    assertThat(folder.resolve("house-plan.xlsx")).hasContent("result");
    assertThat(folder.resolve("house-plan 2027-03-01.xlsx")).hasContent("input");
  }
}
