package sheaf.scanner.picture;

/**
 * A JPEG or PNG file.
 *
 * @param content the whole file
 * @param header what it says of itself
 */
record SinglePicture(byte[] content, PictureHeader header) implements PictureFile {

  @Override
  public int pages() {
    return 1;
  }

  @Override
  public Picture page(int index) throws UnreadableException {
    return new Picture(Decoding.upright(content, header.colour()), header.stated());
  }

  @Override
  public void close() {
    // Nothing is held but the bytes.
  }
}
