#version 330 core
in vec3 normal;
in vec3 local;
in vec3 halves;
in vec4 colour;
uniform vec3 key;
out vec4 shown;
void main() {
  float sky = 0.80 + 0.12 * normal.z + 0.10 * dot(normal, key);
  shown = vec4(colour.rgb * sky, colour.a);
}
