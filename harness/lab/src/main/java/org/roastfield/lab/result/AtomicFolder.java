package org.roastfield.lab.result;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import org.jspecify.annotations.Nullable;

/**
 * Makes a folder so that a reader sees all of it or nothing: a temporary folder beside it, then a
 * move.
 *
 * <p>A folder that is there already is refused, since no file system that Java knows of can
 * exchange two full folders in one step; single files of it can be replaced with {@link
 * AtomicFile}.
 */
public final class AtomicFolder {

  private AtomicFolder() {}

  /** Writes the files of a folder. */
  public interface Content {

    /** Writes into {@code folder}, which is empty. */
    void writeTo(Path folder) throws IOException;
  }

  /**
   * Makes a folder; nothing is left behind on failure.
   *
   * @param target does not exist; the folders above it are made if need be
   * @throws FileAlreadyExistsException if there is something at {@code target}
   * @throws IOException if it cannot be written
   */
  public static void write(Path target, Content content) throws IOException {
    Path whole = target.toAbsolutePath().normalize();
    refuseExisting(target, whole);
    Path parent = whole.getParent();
    if (parent == null) {
      throw new FileSystemException(target.toString(), null, "is no folder that can be made");
    }
    Files.createDirectories(parent);
    Path partial = AtomicFile.partial(whole);
    Files.createDirectory(partial);
    try {
      content.writeTo(partial);
      refuseExisting(target, whole);
      Files.move(partial, whole, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      delete(partial);
    }
  }

  private static void refuseExisting(Path target, Path whole) throws IOException {
    if (Files.exists(whole, LinkOption.NOFOLLOW_LINKS)) {
      throw new FileAlreadyExistsException(
          target.toString(), null, "is there already; choose another folder, or move it away");
    }
  }

  private static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes)
              throws IOException {
            Files.delete(file);
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult postVisitDirectory(Path folder, @Nullable IOException e)
              throws IOException {
            Files.delete(folder);
            return FileVisitResult.CONTINUE;
          }
        });
  }
}
