#version 330 core
in vec3 normal;
in vec4 colour;
uniform vec3 key;
uniform float additive;
uniform float lit;
uniform float up;
out vec4 shown;
void main() {
  vec3 n = gl_FrontFacing ? normal : -normal;
  float sky = mix(1.0, 0.80 + 0.12 * n.z * up + 0.10 * dot(n, key), lit);
  shown = additive > 0.5
      ? vec4(colour.rgb * colour.a, 0.0)
      : vec4(colour.rgb * sky, colour.a);
}
