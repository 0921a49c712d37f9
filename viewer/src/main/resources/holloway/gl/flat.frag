#version 330 core
// Letters are how much of a pixel is covered; everything else points at a covered place.
in vec2 uv;
in vec4 colour;
uniform sampler2D atlas;
out vec4 shown;
void main() {
  shown = vec4(colour.rgb, colour.a * texture(atlas, uv).r);
}
