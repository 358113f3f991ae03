// Vertex colours, lit by one directional lamp and ambient light.

#import bevy_pbr::{mesh_functions, view_transformations::position_world_to_clip}

struct Material {
    // Factor of the colour's alpha.
    opacity: f32,
    // 1: lit, 0: unlit.
    shaded: f32,
    // How far what lies on the ground is pressed down under the jumper, m.
    sag: f32,
    // WebGL 2 requires the size of uniforms to be a multiple of 16 bytes.
    padding: f32,
}

@group(#{MATERIAL_BIND_GROUP}) @binding(0) var<uniform> material: Material;

struct Vertex {
    @builtin(instance_index) instance: u32,
    @location(0) position: vec3<f32>,
    @location(1) normal: vec3<f32>,
    @location(5) color: vec4<f32>,
}

struct Varyings {
    @builtin(position) position: vec4<f32>,
    @location(0) normal: vec3<f32>,
    @location(1) color: vec4<f32>,
}

// Unit vector towards the lamp, world frame: (3, 5, 3) normalised.
const LAMP = vec3(0.4575, 0.7625, 0.4575);
const LAMP_LIGHT = vec3(0.86, 0.84, 0.82);
const AMBIENT_LIGHT = vec3(0.48, 0.51, 0.54);

// Height below which something lies on the ground, and the radii between which that slopes, m.
const LYING = 0.03;
const SLOPE = vec2(0.12, 1.3);

@vertex
fn vertex(in: Vertex) -> Varyings {
    let world_from_local = mesh_functions::get_world_from_local(in.instance);
    var world = mesh_functions::mesh_position_local_to_world(world_from_local, vec4(in.position, 1.0));
    if abs(world.y) < LYING {
        let part = (length(world.xz) - SLOPE.x) / (SLOPE.y - SLOPE.x);
        world.y -= material.sag * (1.0 - clamp(part, 0.0, 1.0));
    }
    var out: Varyings;
    out.position = position_world_to_clip(world.xyz);
    out.normal = mesh_functions::mesh_normal_local_to_world(in.normal, in.instance);
    out.color = vec4(in.color.rgb, in.color.a * material.opacity);
    return out;
}

@fragment
fn fragment(in: Varyings) -> @location(0) vec4<f32> {
    let light = AMBIENT_LIGHT + LAMP_LIGHT * max(dot(normalize(in.normal), LAMP), 0.0);
    return vec4(in.color.rgb * mix(vec3(1.0), light, material.shaded), in.color.a);
}
