#version 330 core
out float height;
void main() {
  vec2 p = vec2((gl_VertexID & 1) * 4 - 1, (gl_VertexID & 2) * 2 - 1);
  height = p.y * 0.5 + 0.5;
  gl_Position = vec4(p, 0.0, 1.0);
}
