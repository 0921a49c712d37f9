#version 330 core
layout(location = 0) in vec2 place;
layout(location = 1) in vec2 inAtlas;
layout(location = 2) in vec4 paint;
uniform vec2 size;
out vec2 uv;
out vec4 colour;
void main() {
  uv = inAtlas;
  colour = paint;
  gl_Position = vec4(place.x / size.x * 2.0 - 1.0, 1.0 - place.y / size.y * 2.0, 0.0, 1.0);
}
