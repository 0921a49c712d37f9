#version 330 core
// A tube whose radius is decided here: its true one, or as many pixels as the picture asks for.
layout(location = 0) in vec3 centre;
layout(location = 1) in vec3 outward;
layout(location = 2) in vec3 fan;
layout(location = 3) in vec4 paint;
layout(location = 4) in vec4 shape; // radius, metres along, pattern, strength
uniform mat4 view;
uniform mat4 projection;
uniform vec4 cuts[2];
uniform float paneHeight;
uniform float leastPixels;
out vec3 normal;
out vec4 colour;
out float along;
flat out int pattern;
out float gl_ClipDistance[2];
void main() {
  vec4 eye = projection * view * vec4(centre, 1.0);
  float metresPerPixel = abs(eye.w) * 2.0 / (projection[1][1] * paneHeight);
  float radius = max(shape.x, 0.5 * leastPixels * metresPerPixel);
  vec4 world = vec4(centre + fan * radius * 2.6 + outward * radius, 1.0);
  normal = outward;
  colour = vec4(paint.rgb, shape.w);
  along = shape.y / (2.0 * radius);
  pattern = int(shape.z + 0.5);
  gl_ClipDistance[0] = dot(cuts[0], vec4(centre, 1.0));
  gl_ClipDistance[1] = dot(cuts[1], vec4(centre, 1.0));
  gl_Position = projection * view * world;
}
