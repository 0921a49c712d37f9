#version 330 core
// Matte, lit from the sky and a little from one side; darker within a hand's width of its edges, so
// that pieces are told apart where they meet without an outline. The inside of a cut piece is flat.
in vec3 normal;
in vec3 local;
in vec3 halves;
in vec4 colour;
uniform vec3 key;
uniform vec3 cutColour;
uniform float cutShare;
uniform float up;
out vec4 shown;
void main() {
  if (!gl_FrontFacing) {
    shown = vec4(mix(colour.rgb, cutColour, cutShare), 1.0);
    return;
  }
  float sky = 0.70 + 0.20 * normal.z * up + 0.16 * dot(normal, key);
  vec3 toEdge = halves - abs(local);
  // The face's own axis has no edge to be near to.
  vec3 onFace = vec3(1.0) - step(toEdge, vec3(1e-4));
  vec3 near = mix(vec3(1.0), smoothstep(vec3(-0.004), vec3(0.035), toEdge), onFace);
  float meet = mix(0.80, 1.0, near.x * near.y * near.z);
  shown = vec4(colour.rgb * sky * meet, 1.0);
}
