#version 330 core
layout(location = 0) in vec3 place;
layout(location = 1) in vec3 facing;
layout(location = 2) in vec4 paint;
uniform mat4 view;
uniform mat4 projection;
uniform vec4 cuts[2];
out vec3 normal;
out vec4 colour;
out float gl_ClipDistance[2];
void main() {
  vec4 world = vec4(place, 1.0);
  normal = facing;
  colour = paint;
  gl_ClipDistance[0] = dot(cuts[0], world);
  gl_ClipDistance[1] = dot(cuts[1], world);
  gl_Position = projection * view * world;
}
