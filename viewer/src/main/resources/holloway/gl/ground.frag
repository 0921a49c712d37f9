#version 330 core
in float height;
uniform vec3 high;
uniform vec3 low;
out vec4 shown;
void main() {
  shown = vec4(mix(low, high, smoothstep(0.0, 1.0, height)), 1.0);
}
