#version 330 core
in vec3 normal;
in vec4 colour;
in float along;
flat in int pattern;
uniform vec4 dashes[8];
uniform vec3 key;
uniform vec3 gap;
uniform vec3 rim;
uniform float rimShare;
uniform mat4 view;
uniform float opacity;
out vec4 shown;
void main() {
  vec4 d = dashes[pattern];
  float t = mod(along, d.x + d.y + d.z + d.w);
  bool on = t < d.x || (t >= d.x + d.y && t < d.x + d.y + d.z);
  vec3 body = on ? colour.rgb : mix(colour.rgb, gap, 0.78);
  float facing = abs((view * vec4(normal, 0.0)).z);
  body = mix(body, mix(colour.rgb, rim, rimShare), 1.0 - smoothstep(0.40, 0.62, facing));
  float sky = 0.88 + 0.10 * normal.z + 0.08 * dot(normal, key);
  shown = vec4(body * sky, opacity * colour.a);
}
