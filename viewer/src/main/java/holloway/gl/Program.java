package holloway.gl;

import static org.lwjgl.opengl.GL33C.*;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import org.joml.Matrix4fc;
import org.joml.Vector4fc;
import org.lwjgl.system.MemoryStack;

/** A pair of shaders from the resources, and its numbers by name. */
final class Program implements AutoCloseable {
  private final int id;
  private final Map<String, Integer> places = new HashMap<>();

  Program(String vertex, String fragment) {
    int v = shader(GL_VERTEX_SHADER, vertex);
    int f = shader(GL_FRAGMENT_SHADER, fragment);
    id = glCreateProgram();
    glAttachShader(id, v);
    glAttachShader(id, f);
    glLinkProgram(id);
    glDeleteShader(v);
    glDeleteShader(f);
    if (glGetProgrami(id, GL_LINK_STATUS) == GL_FALSE) {
      throw new IllegalStateException(vertex + ", " + fragment + ": " + glGetProgramInfoLog(id));
    }
  }

  private static int shader(int kind, String name) {
    int id = glCreateShader(kind);
    glShaderSource(id, text(name));
    glCompileShader(id);
    if (glGetShaderi(id, GL_COMPILE_STATUS) == GL_FALSE) {
      throw new IllegalStateException(name + ": " + glGetShaderInfoLog(id));
    }
    return id;
  }

  private static String text(String name) {
    try (InputStream in = Program.class.getResourceAsStream("/holloway/gl/" + name)) {
      if (in == null) {
        throw new IllegalStateException("no shader " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException("shader " + name + " cannot be read", e);
    }
  }

  Program use() {
    glUseProgram(id);
    return this;
  }

  private int at(String name) {
    return places.computeIfAbsent(name, n -> glGetUniformLocation(id, n));
  }

  Program set(String name, float value) {
    glUniform1f(at(name), value);
    return this;
  }

  Program set(String name, float x, float y) {
    glUniform2f(at(name), x, y);
    return this;
  }

  Program set(String name, float x, float y, float z) {
    glUniform3f(at(name), x, y, z);
    return this;
  }

  Program set(String name, Matrix4fc m) {
    try (MemoryStack stack = MemoryStack.stackPush()) {
      glUniformMatrix4fv(at(name), false, m.get(stack.mallocFloat(16)));
    }
    return this;
  }

  Program set(String name, int index, Vector4fc v) {
    glUniform4f(at(name + "[" + index + "]"), v.x(), v.y(), v.z(), v.w());
    return this;
  }

  /** Red, green and blue of 0xRRGGBB. */
  Program colour(String name, int rgb) {
    return set(
        name,
        holloway.look.Rgb.red(rgb),
        holloway.look.Rgb.green(rgb),
        holloway.look.Rgb.blue(rgb));
  }

  @Override
  public void close() {
    glDeleteProgram(id);
  }
}
