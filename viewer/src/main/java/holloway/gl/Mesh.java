package holloway.gl;

import static org.lwjgl.opengl.GL33C.*;

/** Numbers on the graphics card and how they are laid out; filled as often as wanted. */
final class Mesh implements AutoCloseable {
  private final int array = glGenVertexArrays();
  private final int buffer = glGenBuffers();
  private final int cube;
  private final int stride;
  private int count;

  /** Corners one after another, with so many numbers in each attribute. */
  static Mesh ofCorners(int... parts) {
    return new Mesh(0, parts);
  }

  /** A cube drawn once for each group of numbers; attributes 0 and 1 are the cube's own. */
  static Mesh ofCubes(int cube, int... parts) {
    return new Mesh(cube, parts);
  }

  private Mesh(int cube, int... parts) {
    this.cube = cube;
    int sum = 0;
    for (int p : parts) {
      sum += p;
    }
    stride = sum;
    glBindVertexArray(array);
    int first = 0;
    if (cube != 0) {
      glBindBuffer(GL_ARRAY_BUFFER, cube);
      attribute(0, 3, 6, 0, 0);
      attribute(1, 3, 6, 3, 0);
      first = 2;
    }
    glBindBuffer(GL_ARRAY_BUFFER, buffer);
    int at = 0;
    for (int i = 0; i < parts.length; i++) {
      attribute(first + i, parts[i], stride, at, cube == 0 ? 0 : 1);
      at += parts[i];
    }
  }

  private static void attribute(int index, int size, int stride, int at, int divisor) {
    glEnableVertexAttribArray(index);
    glVertexAttribPointer(index, size, GL_FLOAT, false, stride * 4, at * 4L);
    glVertexAttribDivisor(index, divisor);
  }

  Mesh fill(float[] data) {
    count = data.length / stride;
    glBindBuffer(GL_ARRAY_BUFFER, buffer);
    glBufferData(GL_ARRAY_BUFFER, data, GL_DYNAMIC_DRAW);
    return this;
  }

  void draw() {
    if (count == 0) {
      return;
    }
    glBindVertexArray(array);
    if (cube == 0) {
      glDrawArrays(GL_TRIANGLES, 0, count);
    } else {
      glDrawArraysInstanced(GL_TRIANGLES, 0, 36, count);
    }
  }

  @Override
  public void close() {
    glDeleteBuffers(buffer);
    glDeleteVertexArrays(array);
  }

  /** The buffer of a cube from -1 to 1, place and side of each corner; the caller deletes it. */
  static int cube() {
    float[] out = new float[36 * 6];
    int at = 0;
    for (int axis = 0; axis < 3; axis++) {
      for (int sign = -1; sign <= 1; sign += 2) {
        int[][] corners = {{-1, -1}, {1, -1}, {1, 1}, {-1, -1}, {1, 1}, {-1, 1}};
        for (int i = 0; i < 6; i++) {
          // The other way round on the far side, so that all faces look outward.
          int[] c = corners[sign > 0 ? i : 5 - i];
          float[] p = new float[3];
          p[axis] = sign;
          p[(axis + 1) % 3] = c[0];
          p[(axis + 2) % 3] = c[1];
          System.arraycopy(p, 0, out, at, 3);
          out[at + 3 + axis] = sign;
          at += 6;
        }
      }
    }
    int id = glGenBuffers();
    glBindBuffer(GL_ARRAY_BUFFER, id);
    glBufferData(GL_ARRAY_BUFFER, out, GL_STATIC_DRAW);
    return id;
  }
}
