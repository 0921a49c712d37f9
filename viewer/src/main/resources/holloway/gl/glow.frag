#version 330 core
// Light that fills a space: strongest in the middle of each face, gone at its edges.
in vec3 normal;
in vec3 local;
in vec3 halves;
in vec4 colour;
uniform float additive;
out vec4 shown;
void main() {
  vec3 t = abs(local) / max(halves, vec3(1e-6));
  vec3 near = min(t, vec3(1.0));
  vec3 square = near * near;
  vec3 fall = vec3(1.0) - square * square * near;
  vec3 onFace = vec3(1.0) - step(vec3(0.9995), t);
  vec3 soft = mix(vec3(1.0), 0.35 + 0.65 * fall, onFace);
  float much = colour.a * soft.x * soft.y * soft.z;
  shown = additive > 0.5 ? vec4(colour.rgb * much, 0.0) : vec4(colour.rgb, much);
}
