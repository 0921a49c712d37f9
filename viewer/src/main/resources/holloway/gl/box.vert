#version 330 core
// A unit cube, placed and coloured once for each box.
layout(location = 0) in vec3 corner;
layout(location = 1) in vec3 side;
layout(location = 2) in vec3 centre;
layout(location = 3) in vec3 u;
layout(location = 4) in vec3 v;
layout(location = 5) in vec3 w;
layout(location = 6) in vec4 paint;
uniform mat4 view;
uniform mat4 projection;
uniform vec4 cuts[2];
out vec3 normal;
out vec3 local;
out vec3 halves;
out vec4 colour;
out float gl_ClipDistance[2];
void main() {
  vec4 world = vec4(centre + u * corner.x + v * corner.y + w * corner.z, 1.0);
  halves = vec3(length(u), length(v), length(w));
  local = corner * halves;
  vec3 safe = max(halves, vec3(1e-6));
  normal = normalize(u / safe.x * side.x + v / safe.y * side.y + w / safe.z * side.z);
  colour = paint;
  gl_ClipDistance[0] = dot(cuts[0], world);
  gl_ClipDistance[1] = dot(cuts[1], world);
  gl_Position = projection * view * world;
}
