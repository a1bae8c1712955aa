package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import sheaf.core.reading.NotePicture;

/** A handwritten note as a picture. */
final class NoteJson {

  private NoteJson() {}

  static ObjectNode tree(NotePicture note) {
    return Tree.object()
        .put("width", Round.hundredth(note.width()))
        .put("height", Round.hundredth(note.height()))
        .put("png", note.png());
  }

  static NotePicture parse(JsonNode tree) {
    return new NotePicture(
        Tree.number(tree, "width"), Tree.number(tree, "height"), Tree.text(tree, "png"));
  }
}
